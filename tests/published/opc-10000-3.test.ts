// OPC Foundation, OPC Unified Architecture, part 3 (OPC 10000-3), 8.61: currencies of ISO 4217 with
// the exponents of their minor units.
import { describe, it } from "vitest";
import { minorDigits } from "../../lib/index.ts";
import { published } from "./compare.ts";

const exponents: Readonly<Record<string, string>> = {
  USD: "2",
  EUR: "2",
  GBP: "2",
  AUD: "2",
  INR: "2",
  CAD: "2",
  JPY: "0",
  BHD: "3",
};

describe("measure, minor units of currencies", () => {
  it.each(Object.entries(exponents))("%s has %s decimals (READ)", (code, digits) => {
    published(minorDigits(code), digits);
  });
});
