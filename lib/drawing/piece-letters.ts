import type { Length, UnitSystem } from "../measure/index.ts";
import type { FlowItem } from "./flow.ts";
import { namesInShort, tapeLength, textWidth } from "./labels.ts";
import { svg, withFractions } from "./tree.ts";

/** What a drawing needs to know of one piece on a board: a piece of a board plan will do. */
export interface DrawnPiece {
  readonly name: string;
  readonly bed: string;
  readonly part: string;
  readonly length: Length;
  readonly mitred?: boolean;
}

/** Pieces alike in length and section share a letter: they are sawn alike, whatever they become. */
export interface PieceLetter {
  readonly letter: string;
  readonly length: Length;
  readonly words: string;
  readonly beds: readonly string[];
  readonly count: number;
}

const partWords: Readonly<Record<string, string>> = {
  side: "side",
  end: "end",
  "cap-side": "long cap",
  "cap-end": "short cap",
  stake: "stake",
  other: "piece",
};

/** Like pieces have the same key: the same section, and length to a hundredth of a millimetre. */
export function pieceKey(piece: DrawnPiece, section: string): string {
  return [section, Math.round(piece.length.si * 1e5), piece.mitred === true].join("|");
}

interface Found {
  readonly piece: DrawnPiece;
  readonly parts: Set<string>;
  readonly beds: Set<string>;
  count: number;
}

/** Letters for all pieces of a plan: walls, caps, stakes, and in each the longest first. */
export function pieceLetters(
  boards: readonly {
    readonly section: { readonly name: string };
    readonly pieces: readonly DrawnPiece[];
  }[],
): ReadonlyMap<string, PieceLetter> {
  const order = Object.keys(partWords);
  const found = new Map<string, Found>();
  for (const board of boards) {
    for (const piece of board.pieces) {
      const key = pieceKey(piece, board.section.name);
      const entry = found.get(key) ?? { piece, parts: new Set(), beds: new Set(), count: 0 };
      entry.parts.add(partWords[piece.part] ?? piece.part);
      entry.beds.add(piece.bed);
      entry.count += 1;
      found.set(key, entry);
    }
  }
  const rank = (part: string) => (order.includes(part) ? order.indexOf(part) : order.length);
  const sorted = [...found].sort(
    ([, a], [, b]) =>
      rank(a.piece.part) - rank(b.piece.part) || b.piece.length.si - a.piece.length.si,
  );
  return new Map(
    sorted.map(([key, { piece, parts, beds, count }], at) => [
      key,
      {
        letter: letterOf(at),
        length: piece.length,
        words: `${[...parts].join(" or ")}${piece.mitred === true ? ", mitred" : ""}`,
        beds: [...beds].filter((bed) => bed !== ""),
        count,
      },
    ]),
  );
}

/** a, b, … z, aa, ab, … */
export function letterOf(at: number): string {
  const letter = String.fromCharCode(97 + (at % 26));
  return at < 26 ? letter : letterOf(Math.floor(at / 26) - 1) + letter;
}

/** The letters explained, an item each, for a line or lines under the boards. */
export function letterItems(
  letters: Iterable<PieceLetter>,
  options: { readonly units: UnitSystem; readonly bedsShown: number },
): readonly FlowItem[] {
  return [...letters].map(({ letter, length, words, beds, count }) => {
    const listed = namesInShort(beds, options.bedsShown);
    // A piece that is of no bed's frame is called by its own name alone.
    const named = words === partWords.other && listed !== "" ? "" : words;
    const said = [named, listed].filter((each) => each !== "").join(": ");
    const text = ` ${count} × ${tapeLength(length, options.units)} ${said}`;
    return {
      width: textWidth(`${letter}${text}`, 13.5),
      draw: (x, y) => [
        svg("text", { class: "note", x, y }, [
          svg("tspan", { class: "letter" }, [letter]),
          ...withFractions(text),
        ]),
      ],
    };
  });
}
