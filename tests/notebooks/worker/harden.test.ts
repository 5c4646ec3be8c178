import { describe, expect, it } from "vitest";
import { harden } from "../../../notebooks/engine/worker/harden.ts";

/** A worker's scope as engines build it: some things its own, most on prototypes further up. */
function scope() {
  class EventTargetLike {
    addEventListener() {}
  }
  class WorkerScopeLike extends EventTargetLike {
    importScripts() {}
    get caches() {
      return "caches";
    }
    get indexedDB() {
      return "indexedDB";
    }
  }
  class DedicatedLike extends WorkerScopeLike {
    postMessage() {}
    requestAnimationFrame() {}
  }
  class NavigatorLike {
    sendBeacon() {}
    get storage() {
      return "storage";
    }
  }
  return Object.assign(new DedicatedLike(), {
    fetch: () => undefined,
    WebSocket: class {},
    Worker: class {},
    Array,
    JSON,
    somethingBrowsersWillInvent: () => undefined,
    navigator: new NavigatorLike(),
  });
}

describe("harden", () => {
  it("takes away network, storage and workers along the whole chain of prototypes", () => {
    const hard = scope() as unknown as Record<string, unknown>;
    expect(harden(hard)).toEqual([]);
    for (const name of ["fetch", "WebSocket", "Worker", "importScripts", "caches", "indexedDB"])
      expect(hard[name], name).toBeUndefined();
    for (let at: object | null = hard; at; at = Object.getPrototypeOf(at))
      expect(Object.getOwnPropertyDescriptor(at, "caches")?.get, "a getter left").toBeUndefined();
  });

  it("takes away what nobody knows of yet", () => {
    const hard = scope();
    harden(hard);
    expect(hard.somethingBrowsersWillInvent).toBeUndefined();
  });

  it("takes everything from the navigator", () => {
    const hard = scope();
    harden(hard);
    expect(hard.navigator.sendBeacon).toBeUndefined();
    expect(hard.navigator.storage).toBeUndefined();
  });

  it("leaves the language, and the channel to the page until that is held", () => {
    const hard = scope();
    harden(hard);
    expect(hard.Array).toBe(Array);
    expect(hard.JSON).toBe(JSON);
    expect(typeof hard.postMessage).toBe("function");
    expect(harden(hard, (name) => name === "Array")).toEqual([]);
    expect(hard.postMessage).toBeUndefined();
    expect(hard.Array).toBe(Array);
  });

  it("covers what cannot be deleted, for good", () => {
    const holder = Object.create(Object.freeze({ fetch: () => "out" })) as unknown as Record<
      string,
      unknown
    >;
    expect(harden(holder)).toEqual([]);
    expect(holder.fetch).toBeUndefined();
    expect(() => {
      holder.fetch = () => "again";
    }).toThrow();
  });

  it("says what it could not take away", () => {
    const stubborn = Object.freeze({ fetch: () => "out", navigator: Object.freeze({ usb: 1 }) });
    expect(harden(stubborn)).toEqual(["fetch", "navigator.usb"]);
  });
});
