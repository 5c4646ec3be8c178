import { describe, expect, it } from "vitest";
import { amount, mile, pound, readCsv, readYards } from "../../../lib/index.ts";

const read = (text: string) => readYards(readCsv(text, "yards"));

describe("readYards(table)", () => {
  it("reads every column", () => {
    const text =
      "yard,trip_cost,tax,tax_on,delivery,delivery_from,distance,payload\n" +
      "Alder,$6,6.875 %,Goods and delivery,55,150,7 mi,900 lb";
    const [yard] = read(text).rows;
    expect(yard).toMatchObject({ yard: "Alder", tax: 0.06875, taxOn: "goods and delivery" });
    expect([yard?.tripCost?.si, yard?.delivery?.si, yard?.deliveryFrom?.si]).toEqual([6, 55, 150]);
    expect(yard?.tripCost?.currency).toBe("USD");
    expect(yard?.distance && amount(yard.distance, mile)).toBe(7);
    expect(yard?.payload && amount(yard.payload, pound)).toBe(900);
  });

  it("takes blank tax for none, on goods", () => {
    expect(read("yard\nAlder").rows[0]).toMatchObject({ tax: 0, taxOn: "goods" });
  });

  it("takes percentages without the sign where the heading has it", () => {
    expect(read("yard,tax (%)\nAlder,6").rows[0]?.tax).toBe(0.06);
    expect(read("yard,tax\nAlder,6").problems[0]?.code).toBe("wrong-unit");
  });

  it("takes a currency in the heading", () => {
    expect(read("yard,trip_cost (CAD)\nAlder,6").rows[0]?.tripCost?.currency).toBe("CAD");
    expect(read("yard,trip_cost (each)\nAlder,6").problems[0]?.path).toEqual([
      "yards",
      1,
      "trip_cost (each)",
    ]);
  });

  it("has each yard once, capitals aside", () => {
    const { problems, rows } = read("yard,tax\nAlder,6 %\nalder,7 %");
    expect(problems.map(({ code, path }) => [code, path])).toEqual([
      ["duplicate", ["yards", 2, "yard"]],
    ]);
    expect(rows.length).toBe(1);
  });
});
