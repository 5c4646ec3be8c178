import { ProblemError } from "../../lib/index.ts";

/** Code and path of every problem a call throws; none where it gives a value. */
export function problemsOf(
  call: () => unknown,
): readonly (readonly [string, readonly unknown[]])[] {
  try {
    call();
  } catch (error) {
    if (error instanceof ProblemError) {
      return error.problems.map(({ code, path }) => [code, path] as const);
    }
    throw error;
  }
  return [];
}
