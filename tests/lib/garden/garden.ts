import { loadPublished } from "../../../build/published.ts";
import { dataFiles } from "../../../build/steps/made.ts";
import {
  type Bed,
  type BedSpec,
  type FrameChoices,
  foot,
  type GardenChoicesSpec,
  type GardenTables,
  type Length,
  readBeds,
  readCsv,
  readOnHand,
  readPieces,
  readPrices,
  readSection,
  readYards,
  type Screw,
  type Section,
  type SoilMaterial,
  times,
  toBed,
} from "../../../lib/index.ts";

const published = loadPublished(dataFiles());

/** A row of the published materials. */
export function material(name: string): SoilMaterial {
  const row = published.materials?.find((each) => each.material === name);
  if (row === undefined) throw new Error(`no material ${name}`);
  return row as unknown as SoilMaterial;
}

export const screws = published.screws as unknown as readonly Screw[];

export function section(text: string): Section {
  const reading = readSection(text, { path: [] });
  if (!reading.ok) throw new Error(`no section ${text}`);
  return reading.value;
}

export const feet = (count: number): Length => times(count, foot);

/** A 4 ft x 8 ft bed, and whatever else is said of it. */
export function bed(spec: Partial<BedSpec> = {}, choices: Partial<FrameChoices> = {}): Bed {
  return toBed({ bed: "A", length: feet(8), width: feet(4), ...spec }, choices);
}

/** The tables of a garden from their text; what is not given is empty. */
export function tables(texts: Partial<Record<keyof GardenTables, string>>): GardenTables {
  const table = (name: keyof GardenTables) => readCsv(texts[name] ?? "", name);
  return {
    beds: readBeds(table("beds")),
    onHand: readOnHand(table("onHand")),
    yards: readYards(table("yards")),
    prices: readPrices(table("prices")),
    ...(texts.pieces === undefined ? {} : { pieces: readPieces(table("pieces")) }),
  };
}

/** The shipped choices, with rows of the published tables. */
export function choices(more: Partial<GardenChoicesSpec> = {}): GardenChoicesSpec {
  return {
    fill: [
      { material: material("topsoil"), share: 3 },
      { material: material("compost"), share: 1 },
    ],
    topDressing: { material: material("compost") },
    mulch: { material: material("pine bark") },
    fastening: { screws },
    ...more,
  };
}

/** A garden in inches and dollars, of our own invention. */
export const american = {
  beds: `bed,length,width,count,built
A,8 ft,4 ft,3,2014
B,12 ft,4 ft,1,
C,4 ft,4 ft,2,`,
  onHand: `section,length,count,timber,bought
2x12,7 ft 4 in,2,treated,2013
2x12,8 ft,2,treated,2002`,
  yards: `yard,trip_cost,tax,tax_on,delivery,delivery_from
Alder,6,6 %,goods,55,100
Birch,11.50,6 %,goods,70,250`,
  prices: `yard,item,size,price,form,limit,from,step
Alder,2x12 treated,8 ft,21.40,board,40,,
Alder,2x12 treated,12 ft,33.60,board,,,
Birch,2x12 treated,8 ft,20.75,board,6,,
Birch,2x12 treated,12 ft,32.85,board,,,
Alder,topsoil,1 cu yd,32,bulk,,,0.5
Alder,compost,1 cu yd,38,bulk,,,0.5
Alder,compost,1 cu ft,5.20,bag,,,
Birch,compost,1 cu ft,4.90,bag,,,
Birch,topsoil,1 cu ft,4.10,bag,,,
Birch,pine bark,2 cu ft,4.40,bag,,,
Alder,liner,6 ft x 100 ft,84,roll,,,
Birch,corner plate,1,2.10,pack,,,
Alder,corner plate,4,9.00,pack,,,
Alder,1 1/4 in screws,100,8.50,pack,,,
Alder,staples,1000,6.20,pack,,,
Birch,end-cut preservative,32 fl oz,19.90,pack,,,
Alder,2x4 treated,8 ft,6.20,board,,,
Birch,2x4 treated,8 ft,5.95,board,,,`,
} as const;

/** The same trade in millimetres and euros, tax in the prices, decimal commas. */
export const european = {
  beds: `bed;length;width;count;section
A;2,4 m;1,2 m;3;47x225
B;3,6 m;1,2 m;1;47x225`,
  onHand: `section;length;count;timber
47x225;2,2 m;2;larch`,
  yards: `yard;trip_cost;tax;delivery;delivery_from
Erle;4,50;19 %;49,00;80,00
Birke;9,00;19 %;;`,
  prices: `yard;item;size;price;form;limit;from;step
Erle;47x225 larch;2,4 m;€31,90;board;;;
Erle;47x225 larch;3,6 m;€48,50;board;;;
Birke;47x225 larch;4,8 m;€62,00;board;;;
Erle;topsoil;1 m3;€39,00;bulk;;;0,5
Erle;compost;1 m3;€44,00;bulk;;;0,5
Birke;pine bark;60 L;€7,99;bag;;;
Erle;liner;2 m x 30 m;€79,00;roll;;;
Birke;corner plate;1;€1,95;pack;;;
Birke;staples;1000;€5,40;pack;;;`,
} as const;
