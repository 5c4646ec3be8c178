export type { Caution } from "./caution.ts";
export type { Path, Problem, ProblemCode, Reading, Remark } from "./problem.ts";
export { ProblemError } from "./problem-error.ts";
export { isProblem, problemCodes, problemsOf } from "./problems-of.ts";
export { requireRecord, requireRecords } from "./require-record.ts";
export { placeInWords, sentence } from "./sentence.ts";
