/**
 * Where the larger parts that only some notebooks name (`Plot`, `aq`) are put by their own scripts,
 * which run before the room's in the same worker.
 */
export const parts = globalThis as { bedwrightParts?: Record<string, unknown> };

export function addPart(name: string, part: unknown): void {
  parts.bedwrightParts = { ...parts.bedwrightParts, [name]: part };
}
