export { keepActs, shelfKeepActs } from "./acts.ts";
export {
  type Following,
  type FollowOptions,
  type FromOthers,
  followOtherTabs,
} from "./follow.ts";
export type { ContentNow, KeptParts } from "./kept.ts";
