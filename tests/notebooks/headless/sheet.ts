/** A fenced cell. */
export const cell = (head: string, formula: string) =>
  `\`\`\`js cell ${head}\n${formula}\n\`\`\`\n\n`;

/** A notebook with a table and entries. */
export const plot = `# A plot

\`\`\`csv table beds
bed,length,width
A,8 ft,4 ft
"B, tall",6 ft,3 ft
\`\`\`

${cell("depth", 'lengthEntry("2 in", { max: "1 ft", hint: "Two inches is usual." })')}
${cell("soilColour", 'textEntry("brown")')}
`;

/** A notebook that uses it, with a cell of each kind. */
export const sheet = `# A sheet

\`\`\`uses plot.md
beds depth
\`\`\`

${cell("rows", "readBeds(beds)")}
${cell("area", "sumOf(rows.rows.map((bed) => bed.length * bed.width), zeroOf(squareFoot))")}
${cell('fill pinned "Fill needed"', "area * depth")}
${cell("isDeep pinned", "depth > 3 * inch")}
${cell("sizes", "rows.rows.map(({ bed, length, width }) => ({ bed, length, width }))")}
${cell("price", 'moneyEntry("$40.00")')}
${cell("start", "dateEntry(today)")}
${cell("broken", "fail + 1")}
${cell("waiting", "broken + 1")}
${cell("further", "waiting + 1")}
${cell("system", "units")}
${cell("never", "new Promise(() => {})")}
${cell("cuts", "planBoards({ pieces: [], stock: [], kerf: inch / 8, shortfall: inch / 8 })")}
${cell("chart", 'Plot.barY(rows.rows, { x: "bed", y: (bed) => amount(bed.length, foot) }).plot({ ariaLabel: "Lengths" })')}
${cell("warned", '({ boards: 3, cautions: [{ id: "a", fact: "It is old.", advice: "Wear gloves.", defersTo: "Ask locally.", sources: [] }] })')}
`;
