import type { Problem } from "../check/index.ts";
import type { PriceForm, PriceLine } from "../cost/index.ts";
import {
  optionalColumn,
  readRows,
  requiredColumn,
  type TableReading,
  type TableText,
} from "../table/index.ts";
import { inRowOrder } from "./in-row-order.ts";
import { priceLine } from "./price-line.ts";
import { readSize } from "./read-size.ts";
import { choiceCell, moneyCell, nameCell } from "./table-cells.ts";
import { writtenAmount } from "./written-amount.ts";

export const priceForms: readonly PriceForm[] = ["board", "bag", "bulk", "pack", "roll", "kit"];

export const priceColumns = {
  yard: requiredColumn(nameCell),
  item: requiredColumn(nameCell),
  size: requiredColumn(readSize),
  price: requiredColumn(moneyCell),
  form: optionalColumn(choiceCell(priceForms)),
  limit: optionalColumn(writtenAmount("limit")),
  from: optionalColumn(writtenAmount("from")),
  step: optionalColumn(writtenAmount("step")),
};

/**
 * Reads the table of prices: `yard`, `item`, `size` and `price` (of one size), and if wanted `form`,
 * `limit`, `from`, `step`. An item that is a section with its timber and sold by length is a board;
 * two sides are a sheet, three a kit; all else is sold by volume, mass or count. A blank form is
 * that of the kind; loose material from a quarter cubic yard up is `bulk`, less is a `bag`. `limit`,
 * `from` and `step` are numbers of sizes or quantities of the size's kind.
 *
 * @param table the table as text; prices from 0 to 1,000,000
 * @rule one price a row
 * @source common practice
 * @example
 * readPrices(readCsv("yard,item,size,price\nAlder,2x12 treated,8 ft,21.40", "prices")).rows[0].kind // => "board"
 */
export function readPrices(table: TableText): TableReading<PriceLine> {
  const reading = readRows(table, priceColumns);
  const rows: (PriceLine & { readonly row: number })[] = [];
  const problems: Problem[] = [...reading.problems];
  for (const written of reading.rows) {
    const line = priceLine(written, table);
    if (line.ok) rows.push(line.value);
    else problems.push(line.problem);
  }
  return { ...reading, rows, problems: inRowOrder(problems) };
}
