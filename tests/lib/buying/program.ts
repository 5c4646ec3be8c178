import type { IntegerProgram } from "../../../lib/index.ts";
import { solver } from "../lumber/solver.ts";

/** A decision: what one of it costs, and how many there may be at most. */
export interface Decision {
  readonly cost: number;
  readonly most: number;
}

type Term = readonly [amount: number, decision: Decision];

/** An integer programme put together row by row. */
export class Program {
  readonly #decisions: Decision[] = [];
  readonly #rows: { terms: readonly Term[]; least: number; most: number }[] = [];

  /** Never without a bound: there the solver has called dearer solutions the cheapest. */
  decision(cost: number, most = 10_000): Decision {
    const made = { cost, most };
    this.#decisions.push(made);
    return made;
  }

  row(terms: readonly Term[], { least = -Infinity, most = Infinity }): void {
    this.#rows.push({ terms, least, most });
  }

  #written(counted: readonly Decision[] | undefined): IntegerProgram {
    const columns = this.#decisions.map((decision) => ({
      cost: counted === undefined ? decision.cost : Number(counted.includes(decision)),
      most: decision.most,
      rows: [] as number[],
      amounts: [] as number[],
    }));
    const places = new Map(this.#decisions.map((decision, at) => [decision, at]));
    for (const [row, { terms }] of this.#rows.entries()) {
      const sums = new Map<Decision, number>();
      for (const [amount, decision] of terms) {
        sums.set(decision, (sums.get(decision) ?? 0) + amount);
      }
      for (const [decision, amount] of sums) {
        const column = columns[places.get(decision) ?? -1];
        if (amount !== 0) column?.rows.push(row);
        if (amount !== 0) column?.amounts.push(amount);
      }
    }
    const rows = this.#rows.map(({ least, most }) => ({ least, most }));
    return { columns, rows, whole: true };
  }

  /**
   * The least cost, and how many of each decision; undefined where there is no solution. The solver's
   * numbers are rounded to whole ones and every row is checked again with these. With `counted` the
   * cost is how many of these there are.
   */
  async least(
    counted?: readonly Decision[],
  ): Promise<{ hundredThousandths: number; of: (decision: Decision) => number } | undefined> {
    const solve = await solver();
    const { state, values } = await solve(this.#written(counted), {});
    if (state === "infeasible") return undefined;
    if (state !== "optimal") throw new Error(`the solver says ${state}`);
    const whole = new Map(this.#decisions.map((each, at) => [each, Math.round(values[at] ?? 0)]));
    const of = (decision: Decision) => whole.get(decision) ?? 0;
    for (const { terms, least, most } of this.#rows) {
      const sum = terms.reduce((total, [amount, decision]) => total + amount * of(decision), 0);
      const hair = 1e-9 * Math.max(1, ...terms.map(([amount]) => Math.abs(amount)));
      if (sum < least - hair || sum > most + hair) throw new Error("the solver rounds a row away");
    }
    const hundredThousandths = this.#decisions.reduce(
      (sum, each) => sum + Math.round(each.cost * 100_000) * of(each),
      0,
    );
    return { hundredThousandths, of };
  }
}
