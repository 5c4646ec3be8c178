import { requireRecord } from "../check/index.ts";
import { Checks, inch, over, zeroOf } from "../measure/index.ts";
import { fields, listed, named, requireShape, sized, worded } from "../measure/shape.ts";
import { checkCuts } from "./check-board-plan.ts";

const kerf = sized("length", { min: zeroOf(inch), max: over(inch, 2) });
// What `checkCuts` need not know, and a sheet for whoever saws must.
const names = listed(fields({ source: named, pieces: listed(fields({ bed: worded })) }));

/** Throws unless these are the boards of a plan with their cuts, and the saw's kerf. */
export function requireSawn(plan: unknown): void {
  requireRecord(plan, ["plan"]);
  const { cuts, certificate } = plan as { readonly cuts?: unknown; readonly certificate?: unknown };
  const checks = new Checks();
  checkCuts(checks, cuts, ["plan", "cuts"]);
  checks.done();
  requireShape(cuts, names, ["plan", "cuts"]);
  requireShape(certificate, fields({ kerf }), ["plan", "certificate"]);
}
