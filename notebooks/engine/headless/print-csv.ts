import { type Session, wholeTable } from "../run/index.ts";
import type { Host, Units } from "../types/index.ts";
import type { Outcome } from "./outcome.ts";
import { choiceOf, WrongUsage } from "./usage.ts";

/**
 * The one cell asked for, as CSV with all its columns; empty where it has an error.
 *
 * @throws WrongUsage where several were asked for, or one that is no table
 */
export function csvText(
  outcomes: readonly Outcome[],
  { session, host, units }: { session: Session; host: Host; units: Units },
): string {
  const tables = () => choiceOf("tables", tableNames(session, host, units));
  const [only, ...others] = outcomes;
  if (only === undefined || others.length > 0) {
    throw new WrongUsage(`--csv prints one cell: name it with --cell. ${tables()}`);
  }
  const { cell, value, errors } = only;
  if (errors.length > 0) return "";
  const table = wholeTable(value, host, units, { blankColumns: true });
  if (table === undefined) throw new WrongUsage(`${cell.name} is no table. ${tables()}`);
  const { columns, rows, decimal } = table;
  const keys = columns.map(({ key }) => key);
  return host.writeCsv({ kind: "table", name: cell.name, columns: keys, rows, decimal }).trimEnd();
}

function tableNames(session: Session, host: Host, units: Units): readonly string[] {
  return session.outline
    .filter(({ id }) => wholeTable(session.value(id), host, units) !== undefined)
    .map(({ name }) => name);
}
