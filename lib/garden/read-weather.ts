import type { Problem, Reading } from "../check/index.ts";
import { amount, foot, inch, millimetre, readNumber, times } from "../measure/index.ts";
import type { SoilMonthWeather } from "../soil/index.ts";
import {
  type CellPlace,
  readRows,
  requiredColumn,
  type TableReading,
  type TableText,
} from "../table/index.ts";
import { inRowOrder } from "./in-row-order.ts";
import { choiceCell, lengthCell, nothing } from "./table-cells.ts";

const months = [
  ...(["Jan", "Feb", "Mar", "Apr", "May", "Jun"] as const),
  ...(["Jul", "Aug", "Sep", "Oct", "Nov", "Dec"] as const),
] as const;

export const weatherColumns = {
  month: requiredColumn(choiceCell(months)),
  temperature: requiredColumn(temperatureCell),
  rain: requiredColumn(lengthCell(nothing, times(foot, 16))),
  evaporation: requiredColumn(lengthCell(nothing, times(inch, 78))),
};

/**
 * Reads the table of a usual year's weather: `month` (Jan to Dec), `temperature` (10 °C, 50 °F; the
 * degree may stand in the heading, a bare number is °C), `rain`, and `evaporation` from an open pan.
 *
 * @param table the table as text; temperatures from -60 to 60 °C, rain to 16 ft, evaporation to 78 in
 * @returns the months in their order, from January
 * @rule twelve rows, each month once; or none
 * @source common practice
 * @example
 * const all = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
 * const text = ["month,temperature,rain,evaporation", ...all.map((month) => `${month},50 °F,3 in,2 in`)].join("\n");
 * readWeather(readCsv(text, "weather")).rows[11].temperatureC // => 10
 */
export function readWeather(table: TableText): TableReading<SoilMonthWeather> {
  const reading = readRows(table, weatherColumns);
  const problems: Problem[] = [...reading.problems];
  const found = new Map<string, (typeof reading.rows)[number]>();
  for (const row of reading.rows) {
    const first = found.get(row.month);
    if (first === undefined) found.set(row.month, row);
    else
      problems.push({
        code: "duplicate",
        path: [table.name, row.row, "month"],
        allowed: "each month once",
        received: row.month,
        remedy: "Take one of the two rows out.",
        also: [[table.name, first.row, "month"]],
      });
  }
  const missing = months.filter((month) => !found.has(month));
  // A table without a row is one that nobody filled in.
  if (problems.length === 0 && found.size > 0 && missing.length > 0) {
    problems.push({
      code: "missing",
      path: [table.name],
      allowed: "twelve months, Jan to Dec",
      received: `${found.size} months`,
      remedy: `Add ${missing.join(", ")}.`,
    });
  }
  const rows = months.flatMap((month) => {
    const row = found.get(month);
    if (row === undefined) return [];
    const { temperature, rain, evaporation } = row;
    return [
      {
        row: row.row,
        temperatureC: temperature,
        rainMm: amount(rain, millimetre),
        panMm: amount(evaporation, millimetre),
      },
    ];
  });
  return { ...reading, rows, problems: inRowOrder(problems) };
}

/** Degrees Celsius; Fahrenheit where the text or the heading says so. */
function temperatureCell(text: string, place: CellPlace): Reading<number> {
  const [, figure = text, degree] = /^\s*(.*?)\s*°?\s*([CF])?\s*$/i.exec(text) ?? [];
  const unit = (degree ?? place.unit ?? "C").replace("°", "").trim().toUpperCase();
  const isF = unit === "F";
  const bounds = isF ? { min: -76, max: 140 } : { min: -60, max: 60 };
  const reading = readNumber(figure.replace(/^[−–]/, "-"), { path: place.path, ...bounds });
  if (!reading.ok) {
    const allowed = isF ? "a temperature from -76 to 140 °F" : "a temperature from -60 to 60 °C";
    return { ok: false, problem: { ...reading.problem, allowed } };
  }
  const celsius = isF ? ((reading.value - 32) * 5) / 9 : reading.value;
  return { ok: true, value: Number(celsius.toPrecision(12)) };
}
