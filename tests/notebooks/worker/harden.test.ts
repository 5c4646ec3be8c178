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
    get hardwareConcurrency() {
      return 2;
    }
  }
  return Object.assign(new DedicatedLike(), {
    fetch: () => undefined,
    WebSocket: class {},
    Worker: class {},
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

  it("takes the ways out of the navigator and leaves the rest of it", () => {
    const hard = scope();
    harden(hard);
    expect(hard.navigator.sendBeacon).toBeUndefined();
    expect(hard.navigator.storage).toBeUndefined();
    expect(hard.navigator.hardwareConcurrency).toBe(2);
  });

  it("leaves the channel to the page", () => {
    const hard = scope();
    harden(hard);
    expect(typeof hard.postMessage).toBe("function");
    expect(typeof hard.addEventListener).toBe("function");
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
    const stubborn = Object.freeze({ fetch: () => "out" });
    expect(harden(stubborn)).toEqual(["fetch"]);
  });
});
