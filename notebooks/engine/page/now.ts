/** The ISO instant now. */
export const now = () => new Date().toISOString();
