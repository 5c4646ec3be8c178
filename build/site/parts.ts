import type { HostParts } from "../host.ts";

type Facts = Pick<HostParts, "data" | "rules">;

/**
 * What scripts that run before the room's, in the same worker, have put there: the facts (`facts.js`,
 * made by the build), and larger parts that only some notebooks name (`Plot`, `aq`).
 */
const before = globalThis as {
  bedwrightParts?: Readonly<Record<string, unknown>>;
  bedwrightFacts?: Facts;
};

export function parts(): Readonly<Record<string, unknown>> {
  return before.bedwrightParts ?? {};
}

export function addPart(name: string, part: unknown): void {
  before.bedwrightParts = { ...before.bedwrightParts, [name]: part };
}

/** The published tables, and what doc comments say of the library's functions. */
export function facts(): Facts {
  if (!before.bedwrightFacts) throw new Error("the room was started without its facts");
  return before.bedwrightFacts;
}
