export { createSession, type Session, type SessionOptions } from "./session.ts";
export { jsonOf } from "./show/json.ts";
export { show } from "./show/show.ts";
export { TinyDocument } from "./tiny-dom/index.ts";
