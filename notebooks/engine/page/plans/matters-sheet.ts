import type { Context } from "../context.ts";
export function openMattersSheet(_context: Context): void {}
