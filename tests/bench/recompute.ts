import { highsSolver } from "../../build/highs-solver.ts";
import { makeHost } from "../../build/host.ts";
import { longWorkHere } from "../../build/long-work.ts";
import { dataFiles, ruleDocs } from "../../build/steps/made.ts";
import { compileNotebook } from "../../notebooks/engine/compile/index.ts";
import { createSession, type Session } from "../../notebooks/engine/run/index.ts";
import { manyBeds, shipped } from "./gardens.ts";
import { ms, spread } from "./statistics.ts";

const mulchDepth = "rebuild.md#mulchDepth";
const kerf = "rebuild.md#kerf";

async function open(beds: number): Promise<Session> {
  const work = longWorkHere(await highsSolver());
  const host = makeHost({
    longWork: (name) => work[name] ?? (async () => undefined),
    data: dataFiles(),
    rules: ruleDocs(),
    style: "typographic",
  });
  const documents = await shipped("rebuild.md");
  const names = new Set(Object.keys(host.names));
  const program = compileNotebook({ main: "rebuild.md", documents, names });
  return createSession({
    host,
    program,
    entered: { "garden.md#beds": manyBeds(beds) },
    surroundings: { units: "us", today: "2026-03-01" },
    // Printing values for the page is part of the time.
    onValues: () => undefined,
  });
}

/** One change after another, each waited for; times in milliseconds. */
async function change(
  session: Session,
  entry: typeof mulchDepth | typeof kerf,
  texts: readonly string[],
  wait: (session: Session) => Promise<unknown>,
): Promise<readonly number[]> {
  const times: number[] = [];
  for (const text of texts) {
    const started = performance.now();
    session.enter({ [entry]: text });
    await wait(session);
    times.push(performance.now() - started);
  }
  return times;
}

const depths = (count: number) =>
  Array.from({ length: count }, (_, at) => `${1 + (at % 16) / 8} in`);

/**
 * Time from a change of an entry to all cells settled, values printed: without the solver (the depth
 * of the mulch) and with it (the saw's kerf), for gardens of growing size.
 */
export async function recompute(): Promise<void> {
  console.log(
    "recompute: from an entry's change to all cells settled, values printed for the page",
  );
  let smallest: number | undefined;
  for (const [beds, runs] of [
    [14, 120],
    [200, 60],
    [2000, 20],
  ] as const) {
    const session = await open(beds);
    const opened = performance.now();
    await session.done();
    const first = performance.now() - opened;
    await change(session, mulchDepth, depths(10), (one) => one.settled());
    const times = await change(session, mulchDepth, depths(runs), (one) => one.settled());
    const { median, p95 } = spread(times);
    const kerfs = ["3/32 in", "1/16 in", "5/32 in"];
    const solver = spread(await change(session, kerf, kerfs, (one) => one.done()));
    smallest ??= median / beds;
    const growth = (median / beds / smallest).toFixed(2);
    console.log(
      `  ${String(beds).padStart(5)} beds: median ${ms(median)}, p95 ${ms(p95)}; a bed costs ${growth} of what it costs at 14 beds; boards planned anew in ${ms(solver.median)} (all opened in ${ms(first)})`,
    );
    session.dispose();
  }
}
