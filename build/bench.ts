import { type BuyingSeeds, buying } from "../tests/bench/buying.ts";
import { bytes } from "../tests/bench/bytes.ts";
import { cutting } from "../tests/bench/cutting.ts";
import { editing } from "../tests/bench/editing.ts";
import { firstAnswer } from "../tests/bench/first-answer.ts";
import { keeping } from "../tests/bench/keeping.ts";
import { plansSideBySide } from "../tests/bench/plans.ts";
import { recompute } from "../tests/bench/recompute.ts";
import { saving } from "../tests/bench/saving.ts";
import { soilYearsBench } from "../tests/bench/soil-years.ts";

// `npm run bench [-- NAME… [--seeds N]]`. Machines differ and are shared: read the ratios, not the
// milliseconds.
const plain: Readonly<Record<string, (seeds: BuyingSeeds) => Promise<void>>> = {
  recompute,
  firstAnswer,
  editing,
  keeping,
  plans: plansSideBySide,
  bytes,
  buying,
  saving,
  soilYears: soilYearsBench,
};
const names = [...Object.keys(plain), "cutting FILE"];

// All benches together are to take a few minutes only.
const fewSeeds: BuyingSeeds = { seeds: 10, seconds: 3 };
const allSeeds: BuyingSeeds = { seeds: 50, seconds: 10 };

type Asked = { readonly benches: readonly (() => Promise<void>)[] } | { readonly wrong: string };

const cuttingNeeds =
  "cutting needs a file of bin-packing problems: their number; then of each its name; capacity, " +
  "number of items, best known result; one size a line: npm run bench -- cutting FILE";

/** The words without `--seeds N`, and what that says. */
function takeSeeds(words: readonly string[], seeds: BuyingSeeds) {
  const at = words.indexOf("--seeds");
  if (at < 0) return { rest: words, seeds };
  const count = Number(words[at + 1]);
  if (!Number.isInteger(count) || count < 1 || count > 1000) return undefined;
  return { rest: words.toSpliced(at, 2), seeds: { ...seeds, seeds: count } };
}

function readArguments(words: readonly string[]): Asked {
  const taken = takeSeeds(words, allSeeds);
  if (taken === undefined) return { wrong: "--seeds needs a whole number from 1 to 1000." };
  const { rest, seeds } = taken;
  if (rest.length === 0) {
    const few = takeSeeds(words, fewSeeds)?.seeds ?? fewSeeds;
    return { benches: Object.values(plain).map((bench) => () => bench(few)) };
  }
  const benches: (() => Promise<void>)[] = [];
  for (let at = 0; at < rest.length; at += 1) {
    const name = rest[at] ?? "";
    const bench = plain[name];
    const file = rest[at + 1];
    if (bench !== undefined) benches.push(() => bench(seeds));
    else if (name !== "cutting") {
      return { wrong: `Not known: ${name}. There are: ${names.join(", ")}.` };
    } else if (file === undefined || file in plain) {
      return { wrong: cuttingNeeds };
    } else {
      at += 1;
      benches.push(() => cutting(file));
    }
  }
  return { benches };
}

const asked = readArguments(process.argv.slice(2));
if ("wrong" in asked) {
  console.error(asked.wrong);
  process.exit(2);
}
try {
  for (const bench of asked.benches) await bench();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
process.exit(0);
