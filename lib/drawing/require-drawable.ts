import { type Path, requireRecord } from "../check/index.ts";
import { Given } from "../measure/given.ts";
import {
  type Checks,
  foot,
  type Length,
  negative,
  printQuantity,
  times,
  type UnitSystem,
} from "../measure/index.ts";

/** Phones, wide phones, small and usual leaves and sheets of paper. */
export const defaultWidths: readonly number[] = [300, 420, 560, 670];

const systems: readonly UnitSystem[] = ["us", "metric"];
const nothing: Length = times(foot, 0);
// Beyond these no drawing to scale shows a bed or a board.
const size = { above: nothing, max: times(foot, 1000) };
const face = { above: nothing, max: times(foot, 4) };
const depth = { min: nothing, max: times(foot, 20) };
const farthest = times(foot, 10_000);

type Fields = Readonly<Record<string, unknown>>;
type Check = (given: Given, fields: Fields, path: Path) => void;

/** Checks the fields of a record, or says that it is none. */
function inside(given: Given, value: unknown, path: Path, check: Check): void {
  given.attempt(() => {
    requireRecord(value, path);
    check(given, value as Fields, path);
  });
}

function each(given: Given, value: unknown, path: Path, check: Check): void {
  given.list(value, path).forEach((entry, at) => {
    inside(given, entry, [...path, at + 1], check);
  });
}

/** Throws unless the units are known and the widths are drawable. */
export function requireDrawable(units: unknown, widths: unknown): void {
  const given = new Given();
  given.choice(units, systems, ["units"]);
  given.list(widths, ["widths"], 1).forEach((width, at) => {
    given.number(width, ["widths", at + 1], { min: 200, max: 2000 });
  });
  given.done();
}

const checkPlace: Check = (given, place, path) => {
  const bounds = { min: negative(farthest), max: farthest };
  const at = path.slice(0, -1);
  given
    .quantity(place.east, "length", [...at, "east"], bounds)
    .quantity(place.north, "length", [...at, "north"], bounds)
    .choice(place.turned, [true, false], [...at, "turned"]);
};

const checkBed: Check = (given, bed, path) => {
  const { cap = null, place = null, lap = "sides" } = bed;
  given
    .text(bed.name, [...path, "name"])
    .quantity(bed.length, "length", [...path, "length"], size)
    .quantity(bed.width, "length", [...path, "width"], size)
    .choice(lap, ["sides", "ends"], [...path, "lap"]);
  inside(given, bed.section, [...path, "section"], (_, section, at) => {
    given.quantity(section.thickness, "length", [...at, "thickness"], face);
  });
  if (place !== null) inside(given, place, [...path, "place"], checkPlace);
  if (cap === null) return;
  inside(given, cap, [...path, "cap"], (_, section, at) => {
    given.quantity(section.width, "length", [...at, "width"], face);
  });
};

/** Throws unless these are beds that can be drawn from above. */
export function requireBeds(beds: unknown): void {
  const given = new Given();
  each(given, beds, ["beds"], checkBed);
  given.done();
}

const checkFaces: Check = (given, section, path) => {
  given
    .quantity(section.thickness, "length", [...path, "thickness"], face)
    .quantity(section.width, "length", [...path, "width"], face);
};

const checkLayer: Check = (given, layer, path) => {
  const { kind = "soil" } = layer;
  given
    .text(layer.name, [...path, "name"])
    .quantity(layer.depth, "length", [...path, "depth"], depth)
    .choice(kind, ["soil", "topsoil", "compost", "bark"], [...path, "kind"]);
};

/** Throws unless this is a bed that can be drawn in section. */
export function requireSectioned(bed: {
  readonly width: Length;
  readonly section: { readonly thickness: Length };
}): void {
  const given = new Given();
  inside(given, bed, ["bed"], (_, fields, path) => {
    const { name = "A", cap = null, capReach = nothing, liner = false } = fields;
    if (name !== "") given.text(name, [...path, "name"]);
    given
      .quantity(fields.width, "length", [...path, "width"], size)
      .count(fields.courses, [...path, "courses"], { min: 1, max: 10 })
      .choice(liner, [true, false], [...path, "liner"])
      .quantity(capReach, "length", [...path, "capReach"], { min: nothing, max: foot });
    inside(given, fields.section, [...path, "section"], checkFaces);
    if (cap !== null) inside(given, cap, [...path, "cap"], checkFaces);
    each(given, fields.layers, [...path, "layers"], checkLayer);
    if (fields.was !== undefined)
      inside(given, fields.was, [...path, "was"], (_, was, at) => {
        given
          .text(was.name, [...at, "name"])
          .quantity(was.depth, "length", [...at, "depth"], depth);
      });
  });
  const broken = given.problems.some(({ path }) => !path.includes("courses") && path.length < 4);
  if (!broken) given.unless(...wideEnough(bed));
  given.done();
}

type Condition = Parameters<Checks["unless"]>;

function wideEnough(bed: {
  readonly width: Length;
  readonly section: { readonly thickness: Length };
}): Condition {
  const boards = times(bed.section.thickness, 2);
  return [
    bed.width.si > boards.si,
    {
      code: "contradiction",
      path: ["bed", "width"],
      allowed: `more than twice the boards' thickness, ${printQuantity(boards)}`,
      received: printQuantity(bed.width),
      remedy: "Make the bed wider or take a thinner section.",
    },
  ];
}

const checkPiece: Check = (given, piece, path) => {
  const { mitred = false } = piece;
  given
    .text(piece.name, [...path, "name"])
    .text(piece.bed, [...path, "bed"])
    .quantity(piece.length, "length", [...path, "length"], size)
    .choice(mitred, [true, false], [...path, "mitred"]);
};

const checkYardCut: Check = (given, atYard, path) => {
  given
    .quantity(atYard.first, "length", [...path, "first"], size)
    .count(atYard.pieces, [...path, "pieces"], { max: 1000 })
    .quantity(atYard.rest, "length", [...path, "rest"], { min: nothing, max: size.max });
};

const checkBoard: Check = (given, board, path) => {
  given.text(board.board, [...path, "board"]);
  if (board.yard !== null) given.text(board.yard, [...path, "yard"]);
  if (board.layout !== undefined) given.count(board.layout, [...path, "layout"]);
  given.quantity(board.length, "length", [...path, "length"], size);
  inside(given, board.section, [...path, "section"], (_, section, at) => {
    given
      .text(section.name, [...at, "name"])
      .quantity(section.width, "length", [...at, "width"], face);
  });
  given
    .quantity(board.offcut, "length", [...path, "offcut"], { min: nothing, max: size.max })
    .count(board.cutCount, [...path, "cutCount"], { max: 1000 });
  const { squared, atYard = null } = board;
  if (squared !== undefined)
    given.quantity(squared, "length", [...path, "squared"], { min: nothing, max: size.max });
  if (atYard !== null) inside(given, atYard, [...path, "atYard"], checkYardCut);
  each(given, board.pieces, [...path, "pieces"], checkPiece);
};

const checkShort: Check = (given, piece, path) => {
  given
    .text(piece.name, [...path, "name"])
    .text(piece.bed, [...path, "bed"])
    .quantity(piece.short, "length", [...path, "short"], { above: nothing, max: foot });
};

/** Throws unless these are boards with cuts that can be drawn, and pieces said to be shortened. */
export function requireBoards(plan: {
  readonly cuts: unknown;
  readonly shortened?: unknown;
  readonly certificate?: unknown;
}): void {
  const { cuts, shortened = [], certificate } = plan;
  const given = new Given();
  if (certificate !== undefined)
    inside(given, certificate, ["certificate"], (_, { kerf }, path) => {
      given.quantity(kerf, "length", [...path, "kerf"], { min: nothing, max: foot });
    });
  each(given, cuts, ["cuts"], checkBoard);
  each(given, shortened, ["shortened"], checkShort);
  given.done();
}
