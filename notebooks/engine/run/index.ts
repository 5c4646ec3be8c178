export { createSession, type Session, type SessionOptions } from "./session.ts";
export { jsonOf } from "./show/json.ts";
export { show } from "./show/show.ts";
export { titleOf } from "./show/title.ts";
export { type WholeTable, wholeTable } from "./show/whole-table.ts";
export { TinyDocument } from "./tiny-dom/index.ts";
