/** Functions that take any value whatever by design, each with the reason. */
export const anythingGoes: Readonly<Record<string, string>> = {};
