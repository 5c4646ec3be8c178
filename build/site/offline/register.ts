/** The version of the page, as the build has written it. */
export function pageVersion(): string {
  return document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? "";
}

/**
 * Where the closed frame is. With a service worker in charge its answer is sandboxed by itself; else
 * the page sandboxes it.
 */
export function frameAddress(): string {
  const served = navigator.serviceWorker?.controller ? "&sealed" : "";
  return `engine.html?v=${pageVersion()}${served}`;
}

/**
 * Makes the site work without a network from the next visit on.
 *
 * @param newer called when a newer version stands ready; what it is given loads the page with it
 */
export async function workOffline(newer: (use: () => void) => void): Promise<void> {
  const { serviceWorker } = navigator;
  if (!serviceWorker || !/^https?:$/.test(location.protocol)) return;
  let known = serviceWorker.controller !== null;
  let reload = false;
  const registration = await serviceWorker.register("sw.js", { updateViaCache: "none" });
  const use = () => {
    if (!registration.waiting) return location.reload();
    reload = true;
    registration.waiting.postMessage({ kind: "use" });
  };
  serviceWorker.addEventListener("controllerchange", () => {
    if (reload) location.reload();
    // Another page may have let the newer one take over; this one stays what it is.
    else if (known) newer(use);
    known = true;
  });
  serviceWorker.addEventListener("message", ({ data }) => {
    if (data?.kind === "newer") newer(use);
  });
  if (registration.waiting) newer(use);
  registration.addEventListener("updatefound", () => {
    const { installing } = registration;
    installing?.addEventListener("statechange", () => {
      if (installing.state === "installed" && serviceWorker.controller) newer(use);
    });
  });
  const { active } = await serviceWorker.ready;
  active?.postMessage({ kind: "mine", version: pageVersion() });
  lookNowAndThen(registration);
}

/** A page that is left open for days hears of a newer version, too. */
function lookNowAndThen(registration: ServiceWorkerRegistration): void {
  addEventListener("online", () => void registration.update().catch(() => undefined));
  setInterval(() => void registration.update().catch(() => undefined), 3_600_000);
}
