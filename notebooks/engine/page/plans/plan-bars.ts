import type { CellId } from "../../types/index.ts";
import type { BarsDrawing } from "./bars.ts";
import type { Column } from "./columns.ts";

/** One answer over the columns as bars from nothing; undefined where fewer than two have a size. */
export function planBars(
  columns: readonly Column[],
  id: CellId,
  title: string,
): BarsDrawing | undefined {
  const sized = columns.flatMap((column) => {
    const answer = column.answers.get(id);
    return answer?.is === "figure" && answer.measure !== undefined
      ? [{ column, text: answer.figure.text, measure: answer.measure }]
      : [];
  });
  const [first] = sized;
  if (first === undefined) return undefined;
  const alike = sized.filter(({ measure }) => measure.of === first.measure.of);
  if (alike.length < 2) return undefined;
  const isRange = alike.some(({ measure }) => measure.low !== measure.high);
  const said = alike.map(({ column, text }) => `${column.name} ${text}`).join(", ");
  return {
    bars: alike.map(({ column, text, measure }) => ({
      label: column.name,
      from: 0,
      to: measure.likely,
      fromWords: "",
      toWords: text,
      plain: column.plan !== undefined,
      strong: column.plan === undefined,
    })),
    line: { at: 0, words: "" },
    alternative: `${title}: ${said}.`,
    caption: isRange
      ? `${title}. Each bar ends at what is likely; the words say between what.`
      : `${title}. Each bar begins at nothing.`,
  };
}

/** The rows that can be drawn: those with a size in two columns or more. */
export function drawable(columns: readonly Column[], rows: readonly CellId[]): readonly CellId[] {
  return rows.filter((id) => planBars(columns, id, "") !== undefined);
}
