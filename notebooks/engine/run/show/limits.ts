/** How much of a value is shown: what is beyond is counted or cut, with a mark. */
export const limits = {
  rows: 500,
  /** A table's own text is edited where it is shown, so it is never cut short in practice. */
  tableTextRows: 10_000,
  tableTextColumns: 200,
  offeredRows: 500,
  offeredColumns: 50,
  columns: 40,
  items: 100,
  fields: 60,
  depth: 4,
  text: 20_000,
  cellText: 400,
  treeNodes: 40_000,
  forms: 6,
  cautions: 60,
  problems: 500,
} as const;

/** The same for a step between, which is shown only where somebody opens it. */
export const briefly = { rows: 12, items: 12, fields: 16, depth: 2 } as const;
