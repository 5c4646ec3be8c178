import type { Bed } from "./bed.ts";

/** Beds of one build, which take the same of everything that hangs on the frame. */
export interface AlikeBeds {
  readonly bed: Bed;
  readonly names: readonly string[];
}

/** Puts beds of one size and build together, in the order in which they first come. */
export function alikeBeds(beds: readonly Bed[]): readonly AlikeBeds[] {
  const groups = new Map<string, { readonly bed: Bed; readonly names: string[] }>();
  for (const bed of beds) {
    const sizes = [bed.length, bed.width, bed.section.thickness, bed.section.width];
    const build = [bed.courses, bed.timber, bed.lap, bed.cap?.name, bed.stakes, bed.liner];
    const key = JSON.stringify([...sizes.map(({ si }) => si.toFixed(6)), ...build]);
    const group = groups.get(key);
    if (group === undefined) groups.set(key, { bed, names: [bed.name] });
    else group.names.push(bed.name);
  }
  return [...groups.values()];
}
