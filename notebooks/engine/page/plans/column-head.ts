import type { Plan } from "../../store/index.ts";
import { button, el } from "../dom.ts";
import type { Column } from "./columns.ts";
import { dayOf } from "./words.ts";

export interface HeadActs {
  use(plan: Plan): void;
  rename(plan: Plan): void;
  putAway(plan: Plan): void;
}

/** The head of a column: its name, how it stands, and what can be done with the plan. */
export function columnHead(column: Column, acts: HeadActs): HTMLElement[] {
  const { plan, name, is, why, sameAsNow } = column;
  const going = is === "running" || is === "waiting";
  const state = going ? "being worked out" : is === "failed" ? `not worked out: ${why ?? ""}` : "";
  const parts = [
    el("span", { class: "planname" }, name),
    el("small", {}, plan ? (sameAsNow ? "the same as now" : `kept ${dayOf(plan.made)}`) : "in use"),
    ...(state === "" ? [] : [el("small", { class: going ? "stale" : "refused" }, state)]),
  ];
  return plan ? [...parts, headActs(plan, sameAsNow, acts)] : parts;
}

function headActs(plan: Plan, sameAsNow: boolean, acts: HeadActs): HTMLElement {
  const all: readonly (readonly [words: string, act: () => void])[] = [
    ...(sameAsNow ? [] : [["Use this", () => acts.use(plan)] as const]),
    ["Rename", () => acts.rename(plan)],
    ["Put away", () => acts.putAway(plan)],
  ];
  return el(
    "span",
    { class: "headacts" },
    ...all.map(([words, act]) =>
      button(words, act, {
        class: "lnk",
        "aria-label": `${words}: ${plan.name}`,
        "data-key": `${words} ${plan.name}`,
      }),
    ),
  );
}
