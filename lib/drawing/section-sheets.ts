import { metre, times } from "../measure/index.ts";
import { bothLengths, tapeLength, textWidth } from "./labels.ts";
import { dimensionLine } from "./marks.ts";
import {
  bands,
  drawnBand,
  drawnLeads,
  fits,
  formerSurface,
  freeText,
  type Lead,
  labelPx,
  leadText,
  type SectionSheet,
  wall,
} from "./section-parts.ts";
import { box, lines, picture, svg, type Tree, words } from "./tree.ts";

const belowGround = 66;

/** The whole bed: what fits stands inside its layer, the rest at the ends of leads. */
export function broadSection(sheet: SectionSheet, width: number): Tree {
  const { bed, wallM, units } = sheet;
  const side = 88;
  const named = bed.was ? [`${bed.was.name}, 11 7⁄8″ higher`] : [];
  const leadTexts = [...sheet.layers.map((layer) => leadText(layer, units)), ...named];
  const right = 40 + Math.max(...leadTexts.map((text) => textWidth(text, labelPx)), 70);
  const reachM = bed.cap ? (bed.capReach?.si ?? 0.0254) : 0;
  const pxPerM = Math.min((width - side - right) / (bed.width.si + 2 * reachM), 300 / wallM);
  const outer = side + reachM * pxPerM;
  const far = outer + bed.width.si * pxPerM;
  const thick = bed.section.thickness.si * pxPerM;
  const above = 18 + ((bed.cap?.thickness.si ?? 0) + overRimM(sheet)) * pxPerM;
  const ground = above + wallM * pxPerM;
  const inside = { left: outer + thick, right: far - thick };
  const leads: Lead[] = [];
  const inner: Tree[] = [];
  for (const band of bands(sheet, ground, pxPerM)) {
    const depth = bothLengths(band.layer.depth, units);
    const kind = band.layer.kind ?? "soil";
    inner.push(...drawnBand(band, inside.left, inside.right));
    const middle = band.y + band.high / 2;
    if (
      fits(`${band.layer.name}  ${depth}`, inside.right - inside.left - 56, band.high) &&
      kind !== "bark"
    ) {
      inner.push(
        words(`layer-text on-${kind}`, band.layer.name, { x: inside.left + 18, y: middle + 4.8 }),
        words(`layer-text on-${kind}`, depth, {
          x: inside.right - 18,
          y: middle + 4.8,
          anchor: "end",
        }),
      );
    } else leads.push({ text: leadText(band.layer, units), x: inside.right - 4, y: middle });
  }
  const rise = sheet.freeM * pxPerM;
  if (Math.abs(sheet.freeM) > 0.0005) {
    // Where the surface was, a line runs through the free board: its words stand beside.
    if (rise >= 19 && bed.was === undefined)
      inner.push(
        words("note", freeText(sheet, true), { x: inside.left + 18, y: above + rise / 2 + 4.8 }),
      );
    else leads.push({ text: freeText(sheet, false), x: inside.right - 4, y: above + rise / 2 });
  }
  if (bed.liner === true) leads.push({ text: "liner", x: far - thick / 2, y: ground + 3 });
  const former = formerSurface(sheet, { ground, pxPerM, ...inside });
  leads.push(...former.leads);
  const height = ground + belowGround;
  return picture("section", { width, height }, sheet.alternative, [
    box("earth", 0, ground, far + 22, belowGround),
    lines("ground-line", [
      [0, ground, outer, ground],
      [far, ground, far + 22, ground],
    ]),
    ...inner,
    ...former.parts,
    ...wall(sheet, { x: outer, rim: above, pxPerM, inwards: 1 }),
    ...wall(sheet, { x: far, rim: above, pxPerM, inwards: -1 }),
    dimensionLine(outer - 14, above, outer - 14, ground),
    words("label", tapeLength(times(metre, wallM), units), {
      x: outer - 24,
      y: (above + ground) / 2 + 4.8,
      anchor: "end",
    }),
    ...widthMeasured(outer, far, ground + 36, bothLengths(bed.width, units)),
    ...drawnLeads(leads, { x: far + 32, top: 10 }),
  ]);
}

/** How far the fill, as it is or as it was, stands above the rim. */
function overRimM({ freeM, wallM, bed }: SectionSheet): number {
  return Math.max(0, -freeM, (bed.was?.depth.si ?? 0) - wallM);
}

function widthMeasured(from: number, to: number, y: number, text: string): readonly Tree[] {
  const half = textWidth(text, labelPx) / 2 + 8;
  const middle = (from + to) / 2;
  return [
    lines("dim", [
      [from, y, middle - half, y],
      [middle + half, y, to, y],
      [from, y - 4, from, y + 4],
      [to, y - 4, to, y + 4],
    ]),
    words("label", text, { x: middle, y: y + 4.8, anchor: "middle" }),
  ];
}

/** One wall and some of the bed, cut off at a dash-dot line; every word at the end of a lead. */
export function narrowSection(sheet: SectionSheet, width: number): Tree {
  const { bed, wallM, units } = sheet;
  const wallText = tapeLength(times(metre, wallM), units);
  const side = textWidth(wallText, labelPx) + 30;
  const texts = sheet.layers.map((layer) => leadText(layer, units));
  const named = bed.was ? [`${bed.was.name}, 7⁄8″ higher`] : [];
  const column = Math.max(
    ...[...texts, ...named, freeText(sheet, false)].map((text) => textWidth(text, labelPx)),
    60,
  );
  const pxPerM = Math.min(Math.max(120 / wallM, 200), 190 / wallM);
  const reach = bed.cap ? (bed.capReach?.si ?? 0.0254) * pxPerM : 0;
  const outer = side + reach;
  const cut = Math.min(outer + (bed.width.si / 2) * pxPerM, width - column - 26);
  const thick = bed.section.thickness.si * pxPerM;
  const above = 16 + ((bed.cap?.thickness.si ?? 0) + overRimM(sheet)) * pxPerM;
  const ground = above + wallM * pxPerM;
  const all = bands(sheet, ground, pxPerM);
  const leads: Lead[] = all.map((band) => ({
    text: leadText(band.layer, units),
    x: cut + 2,
    y: band.y + band.high / 2,
  }));
  if (Math.abs(sheet.freeM) > 0.0005) {
    leads.push({ text: freeText(sheet, false), x: cut + 2, y: above + (sheet.freeM * pxPerM) / 2 });
  }
  if (bed.liner === true) leads.push({ text: "liner", x: outer + thick / 2, y: ground + 3 });
  const former = formerSurface(sheet, { ground, pxPerM, left: outer + thick, right: cut });
  leads.push(...former.leads.map((lead) => ({ ...lead, x: cut + 2 })));
  const height = ground + belowGround;
  return picture("section", { width, height }, sheet.alternative, [
    box("earth", 0, ground, cut, belowGround),
    lines("ground-line", [[0, ground, outer, ground]]),
    ...all.flatMap((band) => drawnBand(band, outer + thick, cut)),
    ...former.parts,
    ...wall(sheet, { x: outer, rim: above, pxPerM, inwards: 1 }),
    dimensionLine(outer - reach - 10, above, outer - reach - 10, ground),
    words("label", wallText, {
      x: outer - reach - 18,
      y: (above + ground) / 2 + 4.8,
      anchor: "end",
    }),
    svg("path", { class: "cut-line", d: `M${cut} 4V${height}` }),
    ...drawnLeads(leads, { x: cut + 24, top: 9 }),
  ]);
}
