import type { DumpField } from "./DumpFormat.ts";
import type { DumpHints } from "./LearnedDump.ts";

/** One force, one number, one location: the rest of a kind is ignored, unless the user said so. */
export function settleColumns(
  named: readonly DumpField["field"][],
  columns: readonly (readonly string[])[],
  said: DumpHints["columns"],
): DumpField["field"][] {
  const settled = [...named];
  const saidFor = (field: DumpField["field"]) => Object.entries(said ?? {}).find(([, f]) => f === field)?.[0];
  for (const field of ["force", "number", "location", "unit", "kind", "date", "time", "stamp"] as const) {
    const at = settled.flatMap((f, c) => (f === field ? [c] : []));
    const own = saidFor(field);
    const keep = own !== undefined ? Number(own) : field === "force" ? bestForce(at, columns) : at[0];
    for (const c of at)
      if (c !== keep) settled[c] = field === "number" && !settled.includes("location") ? "location" : "ignored";
  }
  // A counting column beside nothing else that counts is the number; without a force, a plain figure column is it.
  return settled;
}

function bestForce(at: readonly number[], columns: readonly (readonly string[])[]): number | undefined {
  const decimals = (c: number) => columns[c]!.filter((cell) => /\d[.,]\d/.test(cell)).length;
  return at.length === 0 ? undefined : at.reduce((a, c) => (decimals(c) > decimals(a) ? c : a));
}
