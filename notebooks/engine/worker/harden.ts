/** What a worker offers of network, storage and further workers. Cells get none of it. */
const gone = [
  "fetch",
  "fetchLater",
  "XMLHttpRequest",
  "WebSocket",
  "WebSocketStream",
  "WebSocketError",
  "EventSource",
  "WebTransport",
  "importScripts",
  "Worker",
  "SharedWorker",
  "FontFace",
  "fonts",
  "indexedDB",
  "caches",
  "CacheStorage",
  "BroadcastChannel",
  "Notification",
  "PushManager",
  "RTCDataChannel",
  "RTCPeerConnection",
  "BackgroundFetchManager",
  "ServiceWorkerRegistration",
  "cookieStore",
  "CookieStore",
  "FileSystemSyncAccessHandle",
  "webkitRequestFileSystem",
  "webkitRequestFileSystemSync",
  "webkitResolveLocalFileSystemURL",
  "webkitResolveLocalFileSystemSyncURL",
  "requestAnimationFrame",
  "cancelAnimationFrame",
  "close",
] as const;

const goneFromNavigator =
  /^(sendBeacon|serviceWorker|storage|storageBuckets|locks|credentials|usb|serial|hid|gpu|connection|permissions|mediaCapabilities|clearAppBadge|setAppBadge)$/;

/**
 * Takes away what the worker's scope still offers of network, storage and further workers, along
 * its whole chain of prototypes, so that code compiled later finds none of it by any path. This is
 * the second wall; the first is the policy of the frame. Frames of animation go too: a worker's
 * hang on the visibility of a frame that is hidden, and the runtime must not wait for them.
 *
 * Gives the names that could not be taken away; none, in the engines tried.
 */
export function harden(scope: object): readonly string[] {
  const left = gone.filter((name) => !takeAway(scope, name));
  const { navigator } = scope as { navigator?: object };
  if (!navigator) return left;
  for (const holder of chain(navigator))
    for (const name of Object.getOwnPropertyNames(holder))
      if (goneFromNavigator.test(name) && !takeAway(navigator, name)) left.push(name as never);
  return left;
}

function takeAway(from: object, name: string): boolean {
  for (const holder of chain(from)) {
    try {
      delete (holder as Record<string, unknown>)[name];
    } catch {
      // What cannot be deleted is covered below.
    }
  }
  if (name in from) {
    try {
      Object.defineProperty(from, name, { value: undefined, configurable: false, writable: false });
    } catch {
      return false;
    }
  }
  return (from as Record<string, unknown>)[name] === undefined;
}

function* chain(start: object): Generator<object> {
  for (let at: object | null = start; at; at = Object.getPrototypeOf(at)) yield at;
}
