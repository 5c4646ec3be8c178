import { type Remark, requireRecord } from "../check/index.ts";
import type { PriceLine } from "../cost/index.ts";
import { framePieces, type Piece } from "../lumber/index.ts";
import { requireText } from "../measure/index.ts";
import { requireShape } from "../measure/shape.ts";
import type { Bed } from "./bed.ts";
import { requireBeds } from "./checks.ts";
import type { HandPiece } from "./read-pieces.ts";
import { handPieces, priceRows } from "./shapes.ts";
import { timberOf } from "./timber-of.ts";

/** What decides the timber, and what is cut besides. */
export interface GardenPiecesOptions {
  /** The price list's lines, which decide what timber a piece takes. Default: none. */
  readonly prices?: readonly PriceLine[];
  /** Where a section is priced in several timbers. Default: `treated`. */
  readonly timber?: string;
  /** Pieces listed by hand, besides those of the beds. Default: none. */
  readonly hand?: readonly HandPiece[];
}

/** What is to be cut. */
export interface GardenPieces {
  readonly pieces: readonly Piece[];
  readonly remarks: readonly Remark[];
}

/**
 * All pieces to cut: those of every bed, bed by bed, then those listed by hand. Caps and stakes take
 * their bed's timber where it is priced in their section, else the only one priced, else the choice.
 *
 * @param beds complete beds
 * @param options `prices`, `timber`, `hand`
 * @throws ProblemError where a bed's boards leave no room
 * @rule lap sides: ends = width - 2 thicknesses; lap ends: sides = length - 2 thicknesses; a piece without a timber takes the one priced
 * @source common practice
 * @example
 * const bed = toBed({ bed: "A", length: times(8, foot), width: times(4, foot) });
 * gardenPieces([bed]).pieces.map((piece) => piece.count) // => [2,2]
 */
export function gardenPieces(
  beds: readonly Bed[],
  options: GardenPiecesOptions = {},
): GardenPieces {
  requireBeds(beds);
  requireRecord(options, ["options"]);
  const { prices = [], timber: choice = "treated", hand = [] } = options;
  requireShape(prices, priceRows, ["options", "prices"]);
  requireShape(hand, handPieces, ["options", "hand"]);
  requireText(choice, ["options", "timber"]);
  const timber = timberOf(prices, choice);
  const priced = pricedTimbers(prices);
  const remarks = new Map<string, Remark>();
  const ofBeds = beds.flatMap((bed) =>
    framePieces(bed).map((piece): Piece => {
      if (piece.section.name === bed.section.name) return piece;
      const isPriced = priced.has(`${piece.section.name} ${bed.timber}`);
      const taken = isPriced ? bed.timber : (timber(piece.section) ?? bed.timber);
      if (taken !== bed.timber && taken !== undefined) {
        const text = `${piece.section.name} is not priced in ${bed.timber ?? "the beds' timber"}; taken as ${taken}.`;
        remarks.set(text, { path: ["pieces", "timber"], text });
      }
      return withTimber(piece, taken);
    }),
  );
  const listed = hand.map((row): Piece => {
    const taken = row.timber ?? timber(row.section);
    if (row.timber === undefined && taken !== undefined) {
      const text = `${row.section.name} pieces that name no timber are taken as ${taken}.`;
      remarks.set(text, { path: ["pieces", "timber"], text });
    }
    const { piece: name, section, length, count } = row;
    return withTimber({ name, bed: name, part: "other", section, length, count }, taken);
  });
  return { pieces: [...ofBeds, ...listed], remarks: [...remarks.values()] };
}

function withTimber(piece: Piece, timber: string | undefined): Piece {
  return timber === undefined ? piece : { ...piece, timber };
}

function pricedTimbers(prices: readonly PriceLine[]): ReadonlySet<string> {
  const names = prices.flatMap((line) =>
    line.kind === "board" ? [`${line.section.name} ${line.timber}`] : [],
  );
  return new Set(names);
}
