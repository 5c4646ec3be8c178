import { requireRecord } from "../check/index.ts";
import { metre, times, type UnitSystem } from "../measure/index.ts";
import type { DrawingOptions } from "./board-drawing.ts";
import { bothLengths } from "./labels.ts";
import { defaultWidths, requireDrawable, requireSectioned } from "./require-drawable.ts";
import type { DrawnLayer, SectionedBed } from "./section-parts.ts";
import { broadSection, narrowSection } from "./section-sheets.ts";
import type { Drawing } from "./tree.ts";

/**
 * One bed in section, true to scale: boards end-on, layers with their names and depths, the liner
 * dashed, the wall, the free board and the width measured. The narrow form shows half the bed.
 *
 * @param bed outside `width`, `courses` of `section`, `layers` from the ground up, `liner`, `cap`, the former surface `was`
 * @param options `units` of the labels; `widths` it is drawn for, 200 to 2,000 px
 * @returns a drawing in a form for each width
 * @throws ProblemError where a size is no length above 0, a depth is below 0, or an option is not one of these
 * @rule Free board = courses x board width - sum of the layers.
 * @source common practice
 * @example
 * bedInSection({ width: times(foot, 4), courses: 1, section: { thickness: times(inch, 1.5), width: times(inch, 11.25) }, layers: [{ name: "soil", depth: times(inch, 9) }] }).alternative // => "A bed, 4′ · 1.22 m wide, in section: wall 11 1⁄4″ · 286 mm high; soil 9″ · 229 mm, 2 1⁄4″ · 57 mm free below the rim."
 */
export function bedInSection(bed: SectionedBed, options: DrawingOptions = {}): Drawing {
  requireRecord(options, ["options"]);
  const { units = "us", widths = defaultWidths } = options;
  requireDrawable(units, widths);
  requireSectioned(bed);
  const wallM = bed.section.width.si * bed.courses;
  const layers = bed.layers.filter((layer) => layer.depth.si > 0.0001);
  const freeM = wallM - layers.reduce((sum, layer) => sum + layer.depth.si, 0);
  const alternative = inWords(bed, layers, { wallM, freeM, units });
  const given = { bed, layers, wallM, freeM, units, alternative };
  return {
    kind: "drawing",
    title: `${called(bed)} in section`,
    alternative,
    forms: widths.map((width, at) => ({
      from: at === 0 ? 0 : width,
      tree: width >= 500 ? broadSection(given, width) : narrowSection(given, width),
    })),
  };
}

/** "Bed 1", "High bed", "A bed". */
function called({ name }: SectionedBed): string {
  if (name === undefined) return "A bed";
  return /\bbed\b/i.test(name) ? name : `Bed ${name}`;
}

function inWords(
  bed: SectionedBed,
  layers: readonly DrawnLayer[],
  sizes: { readonly wallM: number; readonly freeM: number; readonly units: UnitSystem },
): string {
  const { wallM, freeM, units } = sizes;
  const both = (lengthM: number) => bothLengths(times(metre, lengthM), units);
  const parts = layers.map((layer) => `${layer.name} ${bothLengths(layer.depth, units)}`);
  if (freeM > 0.0005) parts.push(`${both(freeM)} free below the rim`);
  if (freeM < -0.0005) parts.push(`${both(-freeM)} heaped above the rim`);
  if (bed.liner === true) parts.push("the boards lined");
  if (bed.was !== undefined) parts.push(`${bed.was.name} ${both(bed.was.depth.si)} deep`);
  return `${called(bed)}, ${bothLengths(bed.width, units)} wide, in section: wall ${both(wallM)} high; ${parts.join(", ")}.`;
}
