export { type AppliedLink, applyLink, type LeftOut } from "./apply.ts";
export { isLink } from "./is-link.ts";
export { withLeftOut } from "./left-out.ts";
export {
  type LinkParts,
  type LinkReading,
  readLink,
  type WrittenLink,
  writeLink,
} from "./link.ts";
export type {
  LinkDocument,
  LinkEntry,
  LinkRecord,
  LinkTable,
  RowStep,
  RowSteps,
} from "./record.ts";
export { versionOf } from "./version.ts";
