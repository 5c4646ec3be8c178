import type { ReferenceName } from "../../notebooks/engine/types/index.ts";

/** How a name is written where it is used: what a function is handed and gives; a type's own name. */
export function signatureOf({
  name,
  parameters,
  returns,
}: Pick<ReferenceName, "name" | "parameters" | "returns">): string {
  if (!returns) return name;
  const inside = parameters.map(
    ({ name: parameter, type, optional }) => `${parameter}${optional ? "?" : ""}: ${type}`,
  );
  return `${name}(${inside.join(", ")}): ${returns.type}`;
}
