import { requireRecord } from "../check/index.ts";
import type { Density } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import { type CuttingChoices, cuttingChoices } from "./cutting-choices.ts";
import { type FrameChoices, frameChoices } from "./frame-choices.ts";
import type { FasteningChoices } from "./garden-fasteners.ts";
import type { FillPart } from "./garden-fill.ts";
import type { LinerChoices } from "./garden-liner.ts";
import type { MulchChoices } from "./garden-mulch.ts";
import type { TopDressingChoices } from "./garden-top-dressing.ts";
import { type MoneyChoices, moneyChoices } from "./money-choices.ts";
import { chosenGoods } from "./shapes.ts";

/** What may be chosen for a garden; what is left out takes its default. */
export interface GardenChoicesSpec {
  readonly frame?: Partial<FrameChoices>;
  readonly cutting?: Partial<CuttingChoices>;
  /** What the beds are filled with: rows of the table of materials with their shares. */
  readonly fill: readonly FillPart[];
  /** The compost's row, and if wanted `depth` and `heap`. */
  readonly topDressing: TopDressingChoices;
  /** The mulch's row, and if wanted its `depth`. */
  readonly mulch: MulchChoices;
  readonly liner?: LinerChoices;
  /** The screws one can buy, and if wanted the rest. */
  readonly fastening: FasteningChoices;
  readonly money?: Partial<MoneyChoices>;
  /** What boards weigh, for masses and trips. Default: not counted. */
  readonly woodDensity?: Density;
}

/** All choices for a garden. */
export interface GardenChoices {
  readonly frame: FrameChoices;
  readonly cutting: CuttingChoices;
  readonly fill: readonly FillPart[];
  readonly topDressing: TopDressingChoices;
  readonly mulch: MulchChoices;
  readonly liner: LinerChoices;
  readonly fastening: FasteningChoices;
  readonly money: MoneyChoices;
  readonly woodDensity: Density | undefined;
}

/**
 * The choices for a garden, complete. Rows of published tables have no default: they are handed in.
 * Timber, currency and the boards' density are chosen once and hold wherever they count.
 *
 * @param spec rows for `fill`, `topDressing`, `mulch` and `fastening`; all else may be left out
 * @rule what is given wins; what is not takes its default
 * @source common practice
 * @example
 * const row = (name) => published.materials.find((each) => each.material === name);
 * const screws = [{ length: inch, diameter: times(0.138, inch) }];
 * const spec = {
 *   fill: [{ material: row("topsoil"), share: 3 }, { material: row("compost"), share: 1 }],
 *   topDressing: { material: row("compost") },
 *   mulch: { material: row("pine bark") },
 *   fastening: { screws },
 * };
 * gardenChoices(spec).cutting.kerf // => 1/8 in
 */
export function gardenChoices(spec: GardenChoicesSpec): GardenChoices {
  requireRecord(spec, ["spec"]);
  for (const name of ["frame", "cutting", "money"] as const) {
    if (spec[name] !== undefined) requireRecord(spec[name], ["spec", name]);
  }
  requireShape(spec, chosenGoods, ["spec"]);
  const frame = frameChoices(spec.frame);
  // Each on its own first: a slip in one must not hide behind what holds for both.
  cuttingChoices(spec.cutting);
  moneyChoices(spec.money);
  const currency = spec.money?.currency ?? spec.cutting?.currency ?? "USD";
  return {
    frame,
    cutting: cuttingChoices({ timber: frame.timber, ...spec.cutting, currency }),
    fill: spec.fill,
    topDressing: spec.topDressing,
    mulch: spec.mulch,
    liner: spec.liner ?? {},
    fastening: spec.fastening,
    money: moneyChoices({ woodDensity: spec.woodDensity, ...spec.money, currency }),
    woodDensity: spec.woodDensity,
  };
}
