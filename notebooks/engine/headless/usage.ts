/** Asked for something that cannot be: the command line ends with 2 and says what is allowed. */
export class WrongUsage extends Error {
  override readonly name = "WrongUsage";
}

/** "One of a, b, c", or that there is none. */
export function choiceOf(what: string, names: Iterable<string>): string {
  const list = [...names].sort();
  return list.length === 0 ? `There are no ${what} here.` : `The ${what} here: ${list.join(", ")}.`;
}

export const usageText = `usage: bedwright run NOTEBOOK [OPTION]…

Works out a notebook and prints the cells asked for, or the pinned ones.
NOTEBOOK is a file, or the name of a notebook that comes with the package,
as notebooks/rebuild.md.

  --table NAME=FILE.csv   use this table instead of the notebook's; may be repeated
  --set NAME=TEXT         type this into that entry; may be repeated
  --cell NAME             print this cell; may be repeated
  --units us|metric       units to print in (us unless given)
  --today YYYY-MM-DD      the day that counts as today (the clock's unless given)
  --json                  print one JSON object, keyed by cell
  --csv                   print one table cell as CSV
  --save FILE.md          save the notebook as a new file, with what it uses and
                          what --set and --table give inside it
  --trust                 run a notebook that does not come with the package
  --help                  print this

Ends with 0; with 1 when a cell asked for has an error; with 2 for wrong usage.`;

export const whyTrust =
  "A notebook's formulas are a program. On a page they run in a closed room; here they run with the " +
  "rights of whoever starts them. With --trust this one runs in a process of its own that may read " +
  "only what it was given and may write nothing and start nothing, but it could reach the network. " +
  "Look through its formulas first, then run it again with --trust.";
