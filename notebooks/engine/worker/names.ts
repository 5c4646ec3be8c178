/** The global names of the language itself. Threads that share memory, and what waits on them, are left out. */
export const languageNames: ReadonlySet<string> = new Set(
  (
    "globalThis Infinity NaN undefined isFinite isNaN parseFloat parseInt decodeURI decodeURIComponent " +
    "encodeURI encodeURIComponent escape unescape Object Function Array Number Boolean String Symbol " +
    "BigInt Date Math JSON Intl Reflect Proxy RegExp Promise Map Set WeakMap WeakSet Iterator Temporal " +
    "Error AggregateError EvalError RangeError ReferenceError SyntaxError TypeError URIError SuppressedError " +
    "DisposableStack AsyncDisposableStack ArrayBuffer DataView Int8Array Uint8Array Uint8ClampedArray " +
    "Int16Array Uint16Array Int32Array Uint32Array Float16Array Float32Array Float64Array " +
    "BigInt64Array BigUint64Array"
  ).split(" "),
);

/** What our own scripts need of a worker besides, until they have taken hold of it. */
export const workerNames: ReadonlySet<string> = new Set(
  (
    "self name location navigator WorkerGlobalScope DedicatedWorkerGlobalScope postMessage onmessage " +
    "setTimeout clearTimeout performance crypto console structuredClone MessageChannel MessagePort " +
    "MessageEvent Event EventTarget DOMException TextEncoder TextDecoder URL atob btoa " +
    "WebAssembly WeakRef FinalizationRegistry eval bedwrightFacts bedwrightParts"
  ).split(" "),
);

/** What cells keep of it: a copy of plain data is nobody's way out. */
export const cellNames: ReadonlySet<string> = new Set(["structuredClone"]);
