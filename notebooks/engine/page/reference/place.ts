/** Where somebody is in the reference. All of it stands in the address, so that it can be linked to. */
export interface Place {
  /** One name, with all that is said of it. */
  readonly name?: string;
  /** All names of a group, one under another. */
  readonly part?: string;
  /** The words searched for. */
  readonly find?: string;
}

/** Reads the place off an address's search part. */
export function placeOf(search: string): Place {
  const asked = new URLSearchParams(search);
  const [name, part, find] = ["reference", "part", "find"].map(
    (key) => asked.get(key) || undefined,
  );
  if (name !== undefined) return { name };
  if (part !== undefined) return { part };
  return find === undefined ? {} : { find };
}

/** The address of a place, relative to the site. */
export function addressOf({ name, part, find }: Place): string {
  if (name !== undefined) return `?reference=${encodeURIComponent(name)}`;
  const [key, value] = part === undefined ? ["find", find] : ["part", part];
  return value === undefined || value === ""
    ? "?reference"
    : `?reference&${key}=${encodeURIComponent(value)}`;
}
