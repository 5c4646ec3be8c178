/**
 * A problem as the engine passes it on. It has the shape of the library's records, with the
 * sentence already made; any value with `problems` of this shape marks the fields they name.
 */
export interface EngineProblem {
  readonly code: string;
  readonly path: readonly (string | number)[];
  readonly allowed: string;
  readonly received: string;
  readonly remedy: string;
  readonly also?: readonly (readonly (string | number)[])[];
}
