import { freezeLanguage } from "./freeze.ts";
import { harden } from "./harden.ts";
import { guardMemory } from "./memory.ts";
import { cellNames, languageNames } from "./names.ts";

/**
 * Closes the scope for cells, after our own scripts have taken hold of what they need: no timer, no
 * channel, nothing but the language itself is left, and none of that can be changed. So a cell can
 * neither speak for the room nor change what the room and the library compute with.
 *
 * Gives the names that could not be taken away; none, in the engines tried.
 */
export function closeScope(scope: object): readonly string[] {
  // Whoever changed what a message is would be handed the port to the page.
  const channels = ["MessagePort", "MessageEvent", "Event", "EventTarget"].map(
    (name) => (scope as Record<string, unknown>)[name],
  );
  guardMemory(scope as Record<string, unknown>);
  const left = harden(scope, (name) => languageNames.has(name) || cellNames.has(name));
  freezeLanguage(scope, channels);
  for (const name of [...languageNames, ...cellNames]) if (name in scope) fix(scope, name);
  return left;
}

/** Makes a global name stand for the same thing for good. */
function fix(scope: object, name: string): void {
  if (Object.getOwnPropertyDescriptor(scope, name)?.configurable === false) return;
  const value: unknown = (scope as Record<string, unknown>)[name];
  Object.defineProperty(scope, name, { value, writable: false, configurable: false });
}
