import type { StateReason, StateRecord } from "../../store/index.ts";

const words: Readonly<Record<StateReason, string>> = {
  typing: "",
  editing: "",
  "bringing back": "Before another state was brought back",
  "taking in": "Before a file was taken in",
  "putting back": "Before everything was put back",
  removing: "Before it was put away",
  "two tabs": "Written while another tab wrote the same",
  "from a file": "Came with a file of everything",
  "left behind": "From a page that ended before it could be written",
};

/** Why a state was taken, where that is worth saying. */
export function reasonWords({ why, plan }: Pick<StateRecord, "why" | "plan">): string {
  const said = words[why] ?? "";
  return plan === undefined ? said : `${said}: the plan “${plan}”`;
}
