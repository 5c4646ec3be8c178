/** The defaults with what was chosen over them; a field given as undefined counts as not given. */
export function withDefaults<T extends object>(defaults: T, chosen: Partial<T>): T {
  const given = Object.entries(chosen).filter(([, value]) => value !== undefined);
  return { ...defaults, ...(Object.fromEntries(given) as Partial<T>) };
}
