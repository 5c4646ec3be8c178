/** What typed arrays may hold in all at one time, in bytes: the largest garden takes a few million. */
const most = 256 * 2 ** 20;

const kinds =
  "Int8Array Uint8Array Uint8ClampedArray Int16Array Uint16Array Int32Array Uint32Array Float16Array " +
  "Float32Array Float64Array BigInt64Array BigUint64Array";

interface Sized {
  readonly byteLength: number;
}

type Maker = (new (...given: unknown[]) => object) & { readonly BYTES_PER_ELEMENT?: number };

/**
 * Sets a limit to the memory of typed arrays: a cell that hoards them gets an error of its own
 * before the machine runs short. They lie outside the engine's heap, where nothing else limits them.
 * What is let go of counts no more, once the engine has noticed. Ordinary objects are not counted:
 * the engine's own limit for the heap ends the room, and the page starts it anew.
 *
 * @param mostBytes the limit, in bytes
 */
export function guardMemory(scope: Record<string, unknown>, mostBytes = most): void {
  const account = new Account(mostBytes, scope.FinalizationRegistry as typeof FinalizationRegistry);
  const buffers = scope.ArrayBuffer as typeof ArrayBuffer;
  const guard = (name: string, bytesOf: (given: readonly unknown[]) => number) => {
    const maker = scope[name] as Maker | undefined;
    if (!maker) return;
    const guarded = new Proxy(maker, {
      construct(target, given, newTarget) {
        account.admits(bytesOf(given));
        const made = Reflect.construct(target, given, newTarget) as object;
        if (!(given[0] instanceof buffers)) account.took(made as object & Sized);
        return made;
      },
    });
    put(maker.prototype, "constructor", guarded);
    put(scope, name, guarded);
  };
  guard("ArrayBuffer", ([length, options]) =>
    Math.max(bytes(length), bytes((options as { maxByteLength?: unknown })?.maxByteLength)),
  );
  for (const name of kinds.split(" ")) {
    const { BYTES_PER_ELEMENT: each = 1 } = (scope[name] ?? {}) as Maker;
    guard(name, ([given]) => each * bytes(lengthOf(given)));
  }
  for (const name of ["resize", "transfer", "transferToFixedLength"])
    put(buffers.prototype, name, undefined);
}

function lengthOf(given: unknown): unknown {
  if (typeof given !== "object" || given === null) return given;
  return "byteLength" in given && !("length" in given) ? 0 : (given as ArrayLike<unknown>).length;
}

function bytes(given: unknown): number {
  return typeof given === "number" && given > 0 ? given : 0;
}

function put(holder: object, name: string, value: unknown): void {
  Object.defineProperty(holder, name, { value, writable: true, configurable: true });
}

/** How much is held. */
class Account {
  #held = 0;
  readonly #most: number;
  readonly #letGo: FinalizationRegistry<number>;

  constructor(mostBytes: number, Registry: typeof FinalizationRegistry) {
    this.#most = mostBytes;
    this.#letGo = new Registry((size) => {
      this.#held -= size;
    });
  }

  /** @throws RangeError where so many bytes more would be too many */
  admits(more: number): void {
    if (this.#held + more <= this.#most) return;
    const millions = Math.round(this.#most / 2 ** 20);
    throw new RangeError(
      `it takes more memory than a notebook has: ${millions} MB for all its typed arrays.`,
    );
  }

  took(made: object & Sized): void {
    const size = made.byteLength;
    // Small ones cost more to follow than they hold.
    if (size < 1024) return;
    this.#held += size;
    // A view may be let go of while its buffer is not.
    const { buffer = made } = made as { readonly buffer?: object };
    this.#letGo.register(buffer, size);
  }
}
