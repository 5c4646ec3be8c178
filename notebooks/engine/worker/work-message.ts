import type { WorkMessage } from "../types/index.ts";

export type Ask = Extract<WorkMessage, { readonly step: "ask" }>;
export type Cancel = Extract<WorkMessage, { readonly step: "cancel" }>;
export type WorkAnswer = Exclude<WorkMessage, Ask | Cancel>;

/** To the worker for long work. A cancelled request still comes to an end, which nobody hears. */
export type ToLongWork =
  | { readonly kind: "solver"; readonly solver: ArrayBuffer }
  | { readonly kind: "work"; readonly work: Ask }
  | { readonly kind: "cancel"; readonly id: number };

/** A room's request for long work, with the session it belongs to. */
export interface SessionWork<W extends WorkMessage = WorkMessage> {
  readonly kind: "work";
  readonly session: number;
  readonly work: W;
}

/**
 * Reads what a room posted to the frame: cells can post there too, so anything that is not exactly
 * a request for long work or its cancelling gives undefined.
 */
export function readRequest(data: unknown): SessionWork<Ask | Cancel> | undefined {
  const message = data as Partial<SessionWork> | null;
  if (typeof message !== "object" || message === null || message.kind !== "work") return undefined;
  const { session, work } = message;
  if (typeof session !== "number" || typeof work !== "object" || work === null) return undefined;
  const { step, id, name, data: given, order = 0 } = work as Partial<Ask>;
  if (typeof id !== "number") return undefined;
  if ((step as string) === "cancel") return { kind: "work", session, work: { step: "cancel", id } };
  if (step !== "ask" || typeof name !== "string" || name.length > 100) return undefined;
  if (typeof order !== "number" || Number.isNaN(order)) return undefined;
  return { kind: "work", session, work: { step, id, name, data: given, order } };
}
