/** A small notebook that takes a table from another: paths between beds, and wood chips for them. */
export const paths = {
  "path.md": `# Paths

Between the beds run \`fig pathLength\` of path.

\`\`\`uses store.md
chips
\`\`\`

\`\`\`js cell width "Width of the paths"
lengthEntry("2 ft", { min: "1 ft" })
\`\`\`

\`\`\`js cell pathLength "Length"
lengthEntry("100 ft")
\`\`\`

\`\`\`js cell area pinned "Area"
width * pathLength
\`\`\`

\`\`\`js cell rows pinned "Rows of chips"
chips.rows.length
\`\`\`
`,
  "store.md": `# Store

\`\`\`csv table chips "Chips"
kind,price
bark,4
oak,6
\`\`\`
`,
};
