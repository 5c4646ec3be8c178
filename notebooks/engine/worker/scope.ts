/** What a worker's global scope gives us; the compiler's DOM types don't hold it. */
export interface WorkerScope {
  onmessage: ((event: { readonly data: unknown; readonly ports: readonly Port[] }) => void) | null;
  postMessage(message: unknown): void;
}

/** What is needed of a message port. */
export interface Port {
  onmessage: ((event: { readonly data: unknown }) => void) | null;
  postMessage(message: unknown): void;
}
