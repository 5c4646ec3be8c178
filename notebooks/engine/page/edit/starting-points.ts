/** What can be added, with what it begins as. */
export interface StartingPoint {
  readonly words: string;
  readonly kind: "cell" | "table";
  readonly name: string;
  readonly content: string;
}

const cell = (words: string, name: string, content: string): StartingPoint => ({
  words,
  kind: "cell",
  name,
  content,
});

/** Cells to begin with: a result, and an entry of each kind, with a default that can be read. */
export function startingPoints(today: string): readonly StartingPoint[] {
  return [
    cell("A result, worked out from other cells", "result", "2 * 3"),
    cell("An entry for a length", "length", 'lengthEntry("8 ft", { min: "1 ft" })'),
    cell("An entry for an area", "area", 'areaEntry("32 sq ft")'),
    cell("An entry for a volume", "volume", 'volumeEntry("1 cu yd")'),
    cell("An entry for a weight", "weight", 'massEntry("40 lb")'),
    cell("An entry for a time", "hours", 'durationEntry("2 h")'),
    cell("An entry for money", "price", 'moneyEntry("10.00")'),
    cell("An entry for a count", "count", 'countEntry("1", { max: 100 })'),
    cell("An entry for a number", "number", 'numberEntry("1")'),
    cell("An entry for a share in per cent", "share", 'percentEntry("10 %", { max: "100 %" })'),
    cell("An entry for a date", "date", `dateEntry("${today}")`),
    cell("An entry for a section of board", "section", 'sectionEntry("2x12")'),
    cell(
      "An entry for one of a few choices",
      "choice",
      'choiceEntry("first", { choices: ["first", "second"] })',
    ),
    cell("An entry for yes or no", "wanted", 'yesNoEntry("yes")'),
    cell("An entry for words", "note", 'textEntry("", { hint: "Anything you like." })'),
  ];
}

/** A table to begin with. */
export const firstTable: StartingPoint = {
  words: "a table",
  kind: "table",
  name: "list",
  content: "thing,count\nfirst,1\n",
};
