import type { z } from "zod";
import type { ImportProblem } from "../../app/contract/importViews.ts";
import type { MappedColumn } from "./mapColumns.ts";
import { rowProblem } from "./problem.ts";

const fieldOfLimit: Readonly<Record<string, string>> = {
  minimumN: "minimum",
  warningN: "warning",
  nominalN: "nominal",
  maximumN: "maximum",
  capacityN: "capacity",
  resolutionN: "resolution",
};

/** What the record's own schema finds, each at the column it came from. */
export function schemaProblems(
  result: z.ZodSafeParseResult<unknown>,
  row: number,
  columns: readonly MappedColumn[],
): ImportProblem[] {
  if (result.success) return [];
  return result.error.issues.map(({ path, message, code }) => {
    const last = String(path.at(-1) ?? "");
    const field = fieldOfLimit[last] ?? last;
    const column = columns.find((c) => c.field?.field === field)?.name;
    if (last === "limits") return rowProblem("limits", row, undefined, "", message);
    const missing = code === "invalid_type" || (last === "name" && code === "too_small");
    return missing
      ? rowProblem("needed", row, column, field, `${field} is needed`)
      : rowProblem("range", row, column, field, plainly(message));
  });
}

/** The schema library's own words, without their capital. */
const plainly = (message: string) => message.charAt(0).toLowerCase() + message.slice(1);
