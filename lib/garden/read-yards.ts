import type { Problem } from "../check/index.ts";
import type { YardTerms } from "../cost/index.ts";
import { foot, mile, times } from "../measure/index.ts";
import {
  optionalColumn,
  readRows,
  requiredColumn,
  type TableReading,
  type TableText,
} from "../table/index.ts";
import { headingOf } from "./heading-of.ts";
import { inRowOrder } from "./in-row-order.ts";
import {
  choiceCell,
  lengthCell,
  massCell,
  moneyCell,
  nameCell,
  percentCell,
} from "./table-cells.ts";

export const yardColumns = {
  yard: requiredColumn(nameCell),
  trip_cost: optionalColumn(moneyCell),
  tax: optionalColumn(percentCell),
  tax_on: optionalColumn(choiceCell(["goods", "goods and delivery"])),
  delivery: optionalColumn(moneyCell),
  delivery_from: optionalColumn(moneyCell),
  distance: optionalColumn(lengthCell(times(foot, 0), times(mile, 1000))),
  payload: optionalColumn(massCell),
};

/**
 * Reads the table of yards: `yard`, and if wanted `trip_cost`, `tax` (blank: none), `tax_on`
 * (`goods`, also where blank, or `goods and delivery`), `delivery` for one order, `delivery_from`
 * (the least order that is brought), `distance` one way, `payload` of the car from there.
 *
 * @param table the table as text; money from 0 to 1,000,000, tax from 0 to 100 %
 * @rule one yard a row; each name once
 * @source common practice
 * @example
 * readYards(readCsv("yard,tax\nAlder,6 %", "yards")).rows[0].tax // => 0.06
 */
export function readYards(table: TableText): TableReading<YardTerms> {
  const reading = readRows(table, yardColumns);
  const rows: (YardTerms & { readonly row: number })[] = [];
  const problems: Problem[] = [...reading.problems];
  for (const written of reading.rows) {
    const {
      row,
      yard,
      tax = 0,
      tax_on,
      trip_cost,
      delivery,
      delivery_from,
      distance,
      payload,
    } = written;
    const twin = rows.find((other) => other.yard.toLowerCase() === yard.toLowerCase());
    if (twin !== undefined) {
      problems.push(twice(table, { row, yard, first: twin.row }));
      continue;
    }
    rows.push({
      row,
      yard,
      tax,
      taxOn: tax_on ?? "goods",
      tripCost: trip_cost,
      delivery,
      deliveryFrom: delivery_from,
      distance,
      payload,
    });
  }
  return { ...reading, rows, problems: inRowOrder(problems) };
}

function twice(
  table: TableText,
  found: { readonly row: number; readonly yard: string; readonly first: number },
): Problem {
  const heading = headingOf(table, "yard");
  return {
    code: "duplicate",
    path: [table.name, found.row, heading],
    allowed: "each yard once",
    received: found.yard,
    remedy: "Put all that is known of a yard into one row.",
    also: [[table.name, found.first, heading]],
  };
}
