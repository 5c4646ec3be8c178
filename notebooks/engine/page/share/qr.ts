import { encode } from "uqr";
import { svgEl } from "../dom.ts";

/** Letters at most of a link whose code a room can still scan from its seats. */
export const mostScanned = 600;

/** Empty fields around a code, as readers need them (ISO/IEC 18004, section 9.1). */
const quiet = 4;

/** The code of a text as a drawing: black on white whatever the page's colours are. */
export function qrDrawing(text: string, alternative: string): SVGElement {
  const { data, size } = encode(text, { ecc: correctionFor(text.length), border: quiet });
  return svgEl(
    "svg",
    {
      class: "qr",
      viewBox: `0 0 ${size} ${size}`,
      role: "img",
      "aria-label": alternative,
      "shape-rendering": "crispEdges",
    },
    svgEl("rect", { width: size, height: size, fill: "#ffffff" }),
    svgEl("path", { d: pathOf(data), fill: "#000000" }),
  );
}

/** A short code can afford to lose more of itself; a long one needs large fields more. */
export function correctionFor(letters: number): "L" | "M" | "Q" {
  return letters <= 120 ? "Q" : letters <= 300 ? "M" : "L";
}

/** Each run of dark fields as one bar. */
function pathOf(data: readonly (readonly boolean[])[]): string {
  return data
    .flatMap((row, y) => {
      const bars: string[] = [];
      let from = -1;
      for (let x = 0; x <= row.length; x += 1) {
        if (row[x] && from < 0) from = x;
        else if (!row[x] && from >= 0) {
          bars.push(`M${from} ${y}h${x - from}v1H${from}z`);
          from = -1;
        }
      }
      return bars;
    })
    .join("");
}
