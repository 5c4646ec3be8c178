import {
  cubicMetre,
  type KindTypes,
  kilogram,
  metre,
  money,
  ProblemError,
  printQuantity,
  type Quantity,
  readQuantity,
  requireQuantity,
  second,
  squareMetre,
  zeroOf,
} from "../../lib/index.ts";
import type { Entry, EntryKind } from "../engine/types/index.ts";
import {
  type BoundedOptions,
  completed,
  limitsInWords,
  madeEntry,
  type NoneOption,
  type OrNone,
  requireOptions,
  unitIn,
} from "./options.ts";

/** What an entry of a quantity may say of itself. Below zero is refused unless `min` lets it in. */
export interface QuantityEntryOptions<Q> extends BoundedOptions<Q>, NoneOption {
  /** The unit a bare number takes; that of the default unless given. */
  readonly unit?: string;
}

type EntryKinds = "length" | "area" | "volume" | "mass" | "duration" | "money";

/** Nothing of each kind: the least that is allowed unless a field says otherwise. */
const zeros: Pick<KindTypes, EntryKinds> = {
  length: zeroOf(metre),
  area: zeroOf(squareMetre),
  volume: zeroOf(cubicMetre),
  mass: zeroOf(kilogram),
  duration: zeroOf(second),
  money: money(0),
};

/** The unit of the default, where it measures the kind; else reading the default says what is wrong. */
function ownUnit(initial: string, kind: EntryKinds): string | undefined {
  const unit = unitIn(initial);
  return unit !== undefined && readQuantity(`1 ${unit}`, kind).ok ? unit : undefined;
}

function zeroOfKind<K extends EntryKinds>(kind: K): KindTypes[K] {
  // Typed as a lookup in all kinds: the compiler does not see that both tables agree.
  return (zeros as KindTypes)[kind];
}

interface ToMake<K extends EntryKinds> {
  readonly kind: K;
  readonly entry: EntryKind;
  readonly initial: string;
}

/** An entry for a quantity of a kind. */
export function quantityEntry<K extends EntryKinds, O extends QuantityEntryOptions<KindTypes[K]>>(
  { kind, entry, initial }: ToMake<K>,
  options: O,
): Entry<OrNone<KindTypes[K], O>> {
  requireOptions(options, ["min", "max", "unit", "orNone"]);
  const unit = kind === "money" ? undefined : (options.unit ?? ownUnit(initial, kind));
  const max = boundOf(options.max, kind, "max");
  const min = boundOf(options.min, kind, "min") ?? zeroOfKind(kind);
  const bounds = {
    path: [],
    min,
    ...(max === undefined ? {} : { max }),
    ...(unit === undefined ? {} : { unit }),
  };
  const limits = limitsInWords(textOf(options.min), textOf(options.max));
  return madeEntry<KindTypes[K], O>(
    {
      entry,
      initial,
      read(text) {
        const reading = readQuantity(text, kind, bounds);
        const complete = completed(text, unit);
        return reading.ok && complete !== undefined ? { ...reading, complete } : reading;
      },
      ...(unit === undefined ? {} : { unit }),
      ...(limits === undefined ? {} : { limits }),
    },
    options,
  );
}

function boundOf<K extends EntryKinds>(
  bound: string | KindTypes[K] | undefined,
  kind: K,
  name: "min" | "max",
): KindTypes[K] | undefined {
  if (bound === undefined) return undefined;
  if (typeof bound !== "string") return requireQuantity(bound, kind, ["options", name]);
  const reading = readQuantity(bound, kind, { path: ["options", name] });
  if (!reading.ok) throw new ProblemError([reading.problem]);
  return reading.value;
}

function textOf(bound: string | Quantity | undefined): string | undefined {
  return bound === undefined || typeof bound === "string" ? bound : printQuantity(bound);
}
