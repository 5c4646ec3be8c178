import { bytes } from "../tests/bench/bytes.ts";
import { cutting } from "../tests/bench/cutting.ts";
import { firstAnswer } from "../tests/bench/first-answer.ts";
import { recompute } from "../tests/bench/recompute.ts";

// `npm run bench [-- NAME…]`. Machines differ and are shared: read the ratios, not the milliseconds.
const plain: Readonly<Record<string, () => Promise<void>>> = { recompute, firstAnswer, bytes };
const names = [...Object.keys(plain), "cutting FILE"];

interface Asked {
  readonly benches: readonly (() => Promise<void>)[];
  readonly wrong?: string;
}

function readArguments(words: readonly string[]): Asked {
  const benches: (() => Promise<void>)[] = [];
  for (let at = 0; at < words.length; at += 1) {
    const name = words[at] ?? "";
    const bench = plain[name];
    const file = words[at + 1];
    if (bench !== undefined) benches.push(bench);
    else if (name !== "cutting") {
      return { benches, wrong: `Not known: ${name}. There are: ${names.join(", ")}.` };
    } else if (file === undefined || file in plain) {
      const format = "a file of bin-packing problems: their number; then of each its name;";
      const rest = "capacity, number of items, best known result; one size a line";
      return { benches, wrong: `cutting needs ${format} ${rest}: npm run bench -- cutting FILE` };
    } else {
      at += 1;
      benches.push(() => cutting(file));
    }
  }
  return { benches: words.length === 0 ? Object.values(plain) : benches };
}

const { benches, wrong } = readArguments(process.argv.slice(2));
if (wrong !== undefined) {
  console.error(wrong);
  process.exit(2);
}
try {
  for (const bench of benches) await bench();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
process.exit(0);
