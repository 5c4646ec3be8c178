export type * from "./entry.ts";
export type * from "./frame.ts";
export type * from "./host.ts";
export type * from "./messages.ts";
export type * from "./notebook.ts";
export type * from "./problem.ts";
export type * from "./shown.ts";
export type * from "./table-text.ts";
