import { describe, expect, it } from "vitest";
import { readCsv, readWeather } from "../../../lib/index.ts";

const year = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];
const table = (heading: string, row: (month: string, at: number) => string) =>
  readWeather(readCsv([heading, ...year.map(row)].join("\n"), "weather"));

describe("readWeather(table)", () => {
  it("reads both degrees, and rain in inches or millimetres", () => {
    const { rows, problems } = table("month,temperature,rain,evaporation", (month, at) =>
      at % 2 === 0 ? `${month},50 °F,3 in,2 in` : `${month},10 °C,76.2 mm,50.8 mm`,
    );
    expect(problems).toEqual([]);
    for (const { temperatureC, rainMm, panMm } of rows) {
      expect(temperatureC).toBeCloseTo(10, 9);
      expect(rainMm).toBeCloseTo(76.2, 9);
      expect(panMm).toBeCloseTo(50.8, 9);
    }
  });

  it("takes units from the headings, and frost", () => {
    const { rows } = table(
      "month,temperature (°F),rain (in),evaporation (in)",
      (month) => `${month},14,1,0`,
    );
    expect(rows[0]?.temperatureC).toBeCloseTo(-10, 9);
    const celsius = table(
      "month,temperature,rain (mm),evaporation (mm)",
      (month) => `${month},-2.5,1,0`,
    );
    expect(celsius.rows[0]?.temperatureC).toBe(-2.5);
  });

  it("puts the months in their order, and names those that are missing or twice", () => {
    const text = "month,temperature,rain,evaporation\nMar,9,1 in,1 in\nJan,5,1 in,1 in";
    const { rows, problems } = readWeather(readCsv(text, "weather"));
    expect(rows.map(({ temperatureC }) => temperatureC)).toEqual([5, 9]);
    expect(problems[0]).toMatchObject({ code: "missing", path: ["weather"] });
    expect(problems[0]?.remedy).toContain("Feb, Apr");
    const twice = readWeather(readCsv(`${text}\nJan,6,1 in,1 in`, "weather"));
    expect(twice.problems[0]).toMatchObject({ code: "duplicate", path: ["weather", 3, "month"] });
  });

  it("refuses what is no temperature at its row", () => {
    const { problems, rows } = table(
      "month,temperature,rain,evaporation",
      (month, at) => `${month},${at === 4 ? "warm" : 9},1 in,1 in`,
    );
    expect(problems[0]?.path).toEqual(["weather", 5, "temperature"]);
    expect(problems[0]?.allowed).toMatch(/°C/);
    expect(rows).toHaveLength(11);
  });
});
