import { bytes } from "../tests/bench/bytes.ts";
import { firstAnswer } from "../tests/bench/first-answer.ts";
import { recompute } from "../tests/bench/recompute.ts";

// `npm run bench [-- NAME…]`. Machines differ and are shared: read the ratios, not the milliseconds.
const benches: Readonly<Record<string, () => Promise<void>>> = { recompute, firstAnswer, bytes };

const asked = process.argv.slice(2);
const unknown = asked.filter((name) => !(name in benches));
if (unknown.length > 0) {
  console.error(`Not known: ${unknown.join(", ")}. There are: ${Object.keys(benches).join(", ")}.`);
  process.exit(2);
}
for (const [name, bench] of Object.entries(benches)) {
  if (asked.length === 0 || asked.includes(name)) await bench();
}
process.exit(0);
