import { expectTypeOf, it } from "vitest";
import type { CalendarDate, Length, Money, Section } from "../../../lib/index.ts";
import type { Entry } from "../../../notebooks/engine/types/index.ts";
import {
  choiceEntry,
  dateEntry,
  lengthEntry,
  moneyEntry,
  percentEntry,
  sectionEntry,
  yesNoEntry,
} from "../../../notebooks/fields/index.ts";

it("a checked cell sees the kind of value that will be entered", () => {
  expectTypeOf(lengthEntry("1/8 in", { max: "1/2 in" })).toEqualTypeOf<Entry<Length>>();
  expectTypeOf(lengthEntry("none", { orNone: true })).toEqualTypeOf<Entry<Length | null>>();
  expectTypeOf(sectionEntry("none", { orNone: true })).toEqualTypeOf<Entry<Section | null>>();
  expectTypeOf(moneyEntry("6")).toEqualTypeOf<Entry<Money>>();
  expectTypeOf(percentEntry("6 %")).toEqualTypeOf<Entry<number>>();
  expectTypeOf(yesNoEntry("yes")).toEqualTypeOf<Entry<boolean>>();
  expectTypeOf(dateEntry("2026")).toEqualTypeOf<Entry<CalendarDate>>();
  expectTypeOf(choiceEntry("sides", { choices: ["sides", "ends"] })).toEqualTypeOf<
    Entry<"sides" | "ends">
  >();
});

it("misspelt options, other kinds and words that are no choice do not compile", () => {
  // @ts-expect-error no such choice
  choiceEntry("corners", { choices: ["sides", "ends"] });
  // @ts-expect-error a number is no limit of a length
  lengthEntry("1 in", { max: 3 });
  // @ts-expect-error only yes and no
  yesNoEntry("maybe");
});
