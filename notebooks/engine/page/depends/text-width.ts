let measuring: CanvasRenderingContext2D | null | undefined;

/** How wide a label is as drawn (pixels). */
export function textWidth(text: string, isBold: boolean): number {
  measuring ??= document.createElement("canvas").getContext("2d");
  if (!measuring) return text.length * 7.5;
  measuring.font = `${isBold ? 680 : 500} 13.5px "Archivo Variable", "Helvetica Neue", Arial, sans-serif`;
  return measuring.measureText(text).width;
}

/** A label over lines of this width: two at most, the rest is left out behind an ellipsis. */
export function wrapped(text: string, width: number, isBold: boolean): readonly string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (line === "" || textWidth(longer, isBold) <= width) line = longer;
    else {
      lines.push(line);
      line = word;
    }
  }
  lines.push(line);
  const [first = "", second, ...more] = lines.map((one) => cut(one, width * 1.4, isBold));
  if (second === undefined) return [first];
  return [first, more.length === 0 ? second : `${second} …`];
}

/** A single word may be longer than any line. */
function cut(text: string, width: number, isBold: boolean): string {
  let end = text.length;
  while (end > 4 && textWidth(text.slice(0, end), isBold) > width) end -= 1;
  return end === text.length ? text : `${text.slice(0, end - 1)}…`;
}
