import * as arquero from "arquero";
import { operators } from "./operators.ts";

// In a cell `d => d.length * 2` reaches a verb as `d => $times(d.length, 2)`: a verb only knows
// functions that are registered, under the name they are written by.
for (const [name, operator] of Object.entries(operators)) {
  arquero.addFunction(name, operator, { override: true });
  arquero.addFunction(`$${name}`, operator, { override: true });
}

/** `aq` as cells have it: its verbs know the arithmetic of quantities. */
export const aq = arquero;
