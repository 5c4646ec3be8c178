/** What a service worker is given, as far as ours uses it: its types and those of a page exclude each other. */
export interface WorkerScope {
  readonly registration: { readonly scope: string };
  readonly clients: {
    claim(): Promise<void>;
    matchAll(options: {
      readonly type: "window";
      readonly includeUncontrolled: true;
    }): Promise<readonly { readonly id: string }[]>;
  };
  skipWaiting(): Promise<void>;
  addEventListener(kind: "install" | "activate", act: (event: LifeEvent) => void): void;
  addEventListener(kind: "fetch", act: (event: FetchEvent) => void): void;
  addEventListener(kind: "message", act: (event: HeardEvent) => void): void;
}

export interface LifeEvent {
  waitUntil(work: Promise<unknown>): void;
}

export interface FetchEvent extends LifeEvent {
  readonly request: Request;
  readonly clientId: string;
  readonly resultingClientId: string;
  respondWith(answer: Promise<Response>): void;
}

export interface HeardEvent extends LifeEvent {
  readonly data: unknown;
  readonly source: { readonly id: string; postMessage(message: unknown): void } | null;
}

/** The files of one build: path, SHA-256 in hexadecimal. Put before the script by the build. */
export interface Build {
  readonly version: string;
  readonly files: Readonly<Record<string, string>>;
}
