export { shareActs } from "./acts.ts";
export type { LinkOutcome, OpenedLink } from "./open-link.ts";
