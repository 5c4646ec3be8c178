import loadHighs, { type Highs, type ModelData } from "highs";
import type { IntegerProgram, ProgramSolution, Solve, SolveLimits } from "../lib/index.ts";

export interface HighsSource {
  /**
   * The bytes of `highs.wasm`, where there is no file beside the script: in a worker they are handed
   * in. In Node the package finds its own.
   */
  readonly wasm?: ArrayBuffer | Uint8Array<ArrayBuffer>;
}

// The loader takes no notice of `wasmBinary`; making the instance ourselves works.
function loadOptions({ wasm }: HighsSource): Parameters<typeof loadHighs>[0] {
  if (wasm === undefined) return {};
  const options = {
    locateFile: (file: string) => file,
    instantiateWasm(imports: WebAssembly.Imports, done: (instance: WebAssembly.Instance) => void) {
      void WebAssembly.instantiate(wasm, imports).then(({ instance }) => done(instance));
      return {};
    },
  };
  return options;
}

function modelOf(highs: Highs, program: IntegerProgram): ModelData {
  const finite = (value: number) =>
    Number.isFinite(value) ? value : Math.sign(value) * highs.infinity;
  const { columns, rows } = program;
  const starts = new Int32Array(columns.length + 1);
  const total = columns.reduce((sum, column) => sum + column.rows.length, 0);
  const indices = new Int32Array(total);
  const values = new Float64Array(total);
  let at = 0;
  for (const [j, column] of columns.entries()) {
    starts[j] = at;
    for (const [k, row] of column.rows.entries()) {
      indices[at] = row;
      values[at] = column.amounts[k] ?? 0;
      at++;
    }
  }
  starts[columns.length] = at;
  return {
    numCols: columns.length,
    numRows: rows.length,
    colCost: Float64Array.from(columns, (column) => column.cost),
    colLower: new Float64Array(columns.length),
    colUpper: Float64Array.from(columns, (column) => finite(column.most)),
    rowLower: Float64Array.from(rows, (row) => finite(row.least)),
    rowUpper: Float64Array.from(rows, (row) => finite(row.most)),
    ...(program.whole ? { integrality: new Int32Array(columns.length).fill(1) } : {}),
    matrix: {
      format: "csc",
      numRows: rows.length,
      numCols: columns.length,
      starts,
      indices,
      values,
    },
  } as ModelData;
}

function solveWith(highs: Highs, program: IntegerProgram, limits: SolveLimits): ProgramSolution {
  const { seconds, gap = 0, start } = limits;
  const { modelStatus } = highs.constants;
  const model = highs.createModel(modelOf(highs, program));
  try {
    model.options.set({
      output_flag: false,
      // The default relative gap would accept a plan some cents too dear.
      mip_rel_gap: 0,
      mip_abs_gap: Math.max(gap, 1e-6),
      ...(seconds === undefined ? {} : { time_limit: seconds }),
    });
    if (start) model.setSolution({ colValue: Float64Array.from(start) });
    model.run();
    const status = model.getModelStatus();
    if (status === modelStatus.infeasible || status === modelStatus.unboundedOrInfeasible) {
      return { state: "infeasible", values: [], bound: Number.POSITIVE_INFINITY, rowWorth: [] };
    }
    const solution = model.getSolution();
    const feasible = model.info.get("primal_solution_status") === 2;
    const optimal = status === modelStatus.optimal;
    const dual = Number(model.info.get("mip_dual_bound"));
    return {
      state: optimal ? "optimal" : "stopped",
      values: feasible ? Array.from(solution.colValue) : [],
      bound: program.whole ? dual : optimal ? model.getObjectiveValue() : Number.NEGATIVE_INFINITY,
      rowWorth: program.whole ? [] : Array.from(solution.rowDual),
    };
  } finally {
    model.dispose();
  }
}

/** The solver of integer programmes as the library wants it, over the package `highs`. */
export async function highsSolver(source: HighsSource = {}): Promise<Solve> {
  const highs = (await loadHighs(loadOptions(source))) as Highs;
  return async (program, limits) => solveWith(highs, program, limits);
}
