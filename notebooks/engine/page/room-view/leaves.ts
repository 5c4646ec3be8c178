/** What is shown at once in the room: some words, and one thing or a few rows under them. */
export interface Leaf {
  /** The heading it stands under. */
  readonly heading: string;
  readonly nodes: readonly HTMLElement[];
}

/** What a node of the page is to the room. */
export type Part = "heading" | "words" | "row" | "thing" | "nothing";

/** So many rows of entries or results fit on the wall together. */
const mostRows = 3;

/**
 * Deals the nodes of the page out to leaves, in their order: words go with what follows them, rows
 * go together while they fit, a drawing or a table stands by itself.
 *
 * @param partOf says what a node is
 */
export function leavesOf(
  nodes: readonly HTMLElement[],
  partOf: (node: HTMLElement) => Part,
): readonly Leaf[] {
  const leaves: Leaf[] = [];
  let heading = "";
  let now: HTMLElement[] = [];
  let rows = 0;
  const end = () => {
    if (now.length > 0) leaves.push({ heading, nodes: now });
    now = [];
    rows = 0;
  };
  for (const node of nodes) {
    const part = partOf(node);
    if (part === "nothing") continue;
    if (part === "heading") {
      end();
      heading = node.textContent?.trim() ?? "";
    } else if (part === "words") {
      // Words begin a leaf; a second paragraph stays with the first.
      if (rows > 0) end();
      now.push(node);
    } else if (part === "row") {
      if (rows === mostRows) end();
      now.push(node);
      rows += 1;
    } else {
      if (rows > 0) end();
      now.push(node);
      end();
    }
  }
  end();
  return leaves;
}
