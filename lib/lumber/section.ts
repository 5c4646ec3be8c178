import {
  type Path,
  type Problem,
  ProblemError,
  type Reading,
  requireRecord,
} from "../check/index.ts";
import { Checks, type Length, requireChoice } from "../measure/index.ts";
import { receivedText } from "../measure/received.ts";
import { checkSection } from "./checks.ts";
import { dressedLengths, type Seasoning } from "./dressed-sizes.ts";
import { inchesToLength, metresPerInch, metresToLength } from "./saw-length.ts";

/** Cross-section of a board: what it is called, and what it measures. */
export interface Section {
  /** The one way of writing it that price lists are matched on: `2x12`, `5/4x6`, `47x225`. */
  readonly name: string;
  /** Measured thickness, the smaller face. */
  readonly thickness: Length;
  /** Measured width, the larger face: the height of a course. */
  readonly width: Length;
  /** Size it is sold by; `null` where it is sold by what it measures. */
  readonly nominal: { readonly thickness: Length; readonly width: Length } | null;
}

/** Where a section's text stands, and how dry the lumber is. */
export interface SectionOptions {
  /** Where the text stands, for the problem's place. */
  readonly path: Path;
  /** Which dressed size a nominal section has. Default `dry`. */
  readonly seasoning?: Seasoning;
}

interface Side {
  readonly amount: number;
  readonly text: string;
  readonly unit: "in" | "mm" | "cm" | "";
}

const sideForm = String.raw`(\d+(?:\.\d+)?(?:[ -]\d+\/\d+)?|\d+\/\d+)\s*(in|inch|inches|["″”]|mm|cm)?`;
const sectionForm = new RegExp(String.raw`^\s*${sideForm}\s*[x×*]\s*${sideForm}\s*(.*?)\s*$`, "iu");

const allowed =
  "a section such as 2x12 (nominal), 5/4x6, 47x225 (mm) or 1.5 in x 11.25 in, from 6 mm to 600 mm a side";
const remedy = "Write thickness x width: 2x12, 47x225 or 1.5 in x 11.25 in.";

function readSide(amountText: string, unitText: string | undefined): Side {
  const amount = amountText
    .split(/[ -]/)
    .map((part) => {
      const [over, under] = part.split("/");
      return under === undefined ? Number(over) : Number(over) / Number(under);
    })
    .reduce((sum, part) => sum + part, 0);
  const unit = unitText === undefined ? "" : unitText.toLowerCase();
  if (unit === "mm" || unit === "cm" || unit === "") return { amount, text: amountText, unit };
  return { amount, text: amountText, unit: "in" };
}

const metresIn = { in: metresPerInch, mm: 0.001, cm: 0.01 } as const;

// A pair without units is nominal inches up to 16 and millimetres from 25 on; no trade list has
// sections between, where the two could be mistaken for each other.
function unitOfBarePair(a: number, b: number): "nominal" | "mm" | undefined {
  if (Math.max(a, b) <= 16) return "nominal";
  return Math.max(a, b) >= 25 ? "mm" : undefined;
}

function nominalName(amount: number): string {
  const quarters = amount * 4;
  if (Number.isInteger(amount)) return String(amount);
  if (amount > 1 && amount < 2 && Number.isInteger(quarters)) return `${quarters}/4`;
  const eighths = amount * 8;
  return amount < 1 && Number.isInteger(eighths)
    ? eighths % 2 === 1
      ? `${eighths}/8`
      : eighths % 4 === 2
        ? `${eighths / 2}/4`
        : "1/2"
    : String(amount);
}

function nominalSection(a: number, b: number, seasoning: Seasoning): Section | undefined {
  const [thicknessIn, widthIn] = a <= b ? [a, b] : [b, a];
  const dressed = dressedLengths(thicknessIn, widthIn, seasoning);
  if (!dressed) return undefined;
  return Object.freeze({
    name: `${nominalName(thicknessIn)}x${nominalName(widthIn)}`,
    ...dressed,
    nominal: Object.freeze({
      thickness: inchesToLength(thicknessIn),
      width: inchesToLength(widthIn),
    }),
  });
}

const tidy = (amount: number): string => String(Number(amount.toFixed(4)));

function actualSection(first: Side, second: Side): Section | undefined {
  const unitOf = (side: Side) => (side.unit === "" ? "mm" : side.unit);
  const sides = [first, second]
    .map((side) => ({ metres: side.amount * metresIn[unitOf(side)], inches: side.unit === "in" }))
    .sort((a, b) => a.metres - b.metres);
  const [thin, wide] = sides;
  if (!thin || !wide || thin.metres < 0.006 - 1e-9 || wide.metres > 0.6 + 1e-9) return undefined;
  const inInches = thin.inches && wide.inches;
  const [t, w] = [thin.metres, wide.metres].map((m) =>
    tidy(inInches ? m / metresPerInch : m * 1000),
  );
  const plain = !inInches && unitOfBarePair(Number(t), Number(w)) === "mm";
  const name = inInches ? `${t} in x ${w} in` : plain ? `${t}x${w}` : `${t} mm x ${w} mm`;
  return Object.freeze({
    name,
    thickness: metresToLength(thin.metres),
    width: metresToLength(wide.metres),
    nominal: null,
  });
}

function sectionOf(first: Side, second: Side, seasoning: Seasoning): Section | undefined {
  const bare = [first, second].filter((side) => side.unit === "").length;
  if (bare === 1) {
    // "1.5 x 11.25 in": one unit at the end serves both.
    const unit = second.unit === "" ? first.unit : second.unit;
    return actualSection({ ...first, unit }, { ...second, unit });
  }
  if (bare === 0) return actualSection(first, second);
  const kind = unitOfBarePair(first.amount, second.amount);
  if (kind === "nominal") return nominalSection(first.amount, second.amount, seasoning);
  return kind === "mm" ? actualSection(first, second) : undefined;
}

function sectionProblem(text: unknown, path: Path): Problem {
  const received = receivedText(text ?? undefined);
  const code = received.trim() === "" ? "missing" : "unreadable";
  return { code, path, allowed, received, remedy };
}

/** A board as price lists name it: a section, and perhaps a timber. */
export interface BoardItem {
  readonly section: Section;
  readonly timber?: string;
}

/**
 * Reads a section with its timber, as the column `item` of a price list has it. Gives the section
 * and the timber in small letters; no timber where none is written.
 *
 * @rule A section, then the timber's name: 2x12 treated.
 * @source common practice
 * @example
 * readBoardItem("2x12 treated", { path: ["item"] }).value.timber // => "treated"
 */
export function readBoardItem(text: string, options: SectionOptions): Reading<BoardItem> {
  requireRecord(options, ["options"]);
  const { path, seasoning = "dry" } = options;
  requireChoice(seasoning, ["dry", "green"], ["seasoning"]);
  const parts = typeof text === "string" ? sectionForm.exec(text) : null;
  const [, a, unitA, b, unitB, rest = ""] = parts ?? [];
  if (a === undefined || b === undefined || /^[\dx×*/.]/i.test(rest)) {
    return { ok: false, problem: sectionProblem(text, path) };
  }
  const section = sectionOf(readSide(a, unitA), readSide(b, unitB), seasoning);
  if (!section) {
    const problem = { ...sectionProblem(text, path), code: "unknown" as const };
    return { ok: false, problem };
  }
  const timber = rest.toLowerCase().replace(/\s+/g, " ");
  return { ok: true, value: timber === "" ? { section } : { section, timber } };
}

/**
 * Reads a section. `2x12`, `2 × 12` and `5/4x6` are nominal sizes in inches and get the dressed size
 * of the softwood standard; `47x225` is what it measures in millimetres; with units, as
 * `1.5 in x 11.25 in` or `45 mm x 145 mm`, it is what it measures. Thickness and width may be
 * written either way round. The section's name is the same for all ways of writing it.
 *
 * @rule Nominal inches up to 16 are looked up in the softwood standard; numbers from 25 on are millimetres as measured.
 * @source ps20-20
 * @example
 * readSection("2 x 12", { path: ["section"] }).value.width // => 11 1/4 in
 */
export function readSection(text: string, options: SectionOptions): Reading<Section> {
  const read = readBoardItem(text, options);
  if (!read.ok) return read;
  if (read.value.timber === undefined) return { ok: true, value: read.value.section };
  return { ok: false, problem: sectionProblem(text, options.path) };
}

/**
 * The same section dry or green, for nominal sections; one sold by what it measures stays as it is.
 *
 * @rule Dressed size at 19 % moisture or less (dry), or above (green), by the softwood standard.
 * @source ps20-20
 * @throws ProblemError where the section is missing or no section, or its nominal size is outside the
 * standard (`unknown`), or the seasoning is another word (`unknown`)
 * @example
 * dressedSection(readSection("2x12", { path: [] }).value, "green").width // => 11 1/2 in
 */
export function dressedSection(section: Section, seasoning: Seasoning): Section {
  const checks = new Checks().choice(seasoning, ["dry", "green"], ["seasoning"]);
  checkSection(checks, section, ["section"]);
  checks.done();
  const nominal = section.nominal ?? null;
  if (nominal === null) return section;
  const inches = (length: Length) => Number((length.si / metresPerInch).toFixed(6));
  const { thickness, width } = nominal;
  const dressed = nominalSection(inches(thickness), inches(width), seasoning);
  if (!dressed) {
    throw new ProblemError([
      { code: "unknown", path: ["section"], allowed, received: section.name, remedy },
    ]);
  }
  return dressed;
}
