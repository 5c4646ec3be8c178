/**
 * Between the page and the hidden frame that makes the workers. With `start` goes a message port:
 * the page and the room speak through it, the frame hears nothing of what they say.
 */
export type ToFrame =
  /** Makes the room from these scripts, in this order; one that runs is ended first. */
  | { readonly kind: "start"; readonly code: readonly string[] }
  /** Ends the room at once. */
  | { readonly kind: "end" }
  /** What the worker for long work is made of: asked for by `needs-long-work`. */
  | { readonly kind: "long-work"; readonly code: string }
  /** The solver's bytes, which come later: much can be worked out before they are needed. */
  | { readonly kind: "solver"; readonly solver: ArrayBuffer }
  /** Is the frame there? A browser may have ended it together with a room that took all memory. */
  | { readonly kind: "ping" }
  /** The reader wants no more of the long work under way. */
  | { readonly kind: "stop-work" };

export type FromFrame =
  | { readonly kind: "frame-ready" }
  | { readonly kind: "alive" }
  | { readonly kind: "needs-long-work" }
  /** The room's script broke, not one of its cells. */
  | { readonly kind: "room-broke"; readonly message: string };
