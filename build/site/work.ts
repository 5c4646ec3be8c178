import { problemsOf, type Solve } from "../../lib/index.ts";
import { startLongWork } from "../../notebooks/engine/worker/long-work.ts";
import { highsSolver } from "../highs-solver.ts";
import { longWorkHere } from "../long-work.ts";

startLongWork((bytes) => {
  let solver: Promise<Solve> | undefined;
  return longWorkHere(async (program, limits) => {
    solver ??= bytes.then((wasm) => highsSolver({ wasm }));
    return (await solver)(program, limits);
  });
}, problemsOf);
