import { announcements } from "./announcements.ts";
import { columnField } from "./columnField.ts";
import type { DateOrder, DumpField, DumpFormat } from "./DumpFormat.ts";
import { dateOrder } from "./dateOrder.ts";
import { dumpLines } from "./dumpLines.ts";
import { dumpShape } from "./dumpShape.ts";
import { unitOfHead, unitQuestion } from "./dumpUnit.ts";
import { findDumpCheck } from "./findDumpCheck.ts";
import { kindOf } from "./kindOf.ts";
import type { DumpHints, DumpQuestion, LearnedDump } from "./LearnedDump.ts";
import { dateQuestion, learnBlocks } from "./learnBlocks.ts";
import { settleColumns } from "./settleColumns.ts";

/**
 * Proposes how a dump or a file is to be read, from what it holds: the separator that cuts most lines alike, then each
 * column by its cells and its head. What the sample cannot tell (day before month or after, a missing unit) is asked.
 */
export function learnDump(text: string, hints: DumpHints = {}): LearnedDump {
  const block = learnBlocks(text, hints);
  if (block !== undefined) return block;
  const { lines } = dumpLines(text);
  const check = findDumpCheck(lines.map((l) => l.raw));
  const bodies = lines.map((l) => (check === undefined ? l.raw : l.raw.slice(0, l.raw.lastIndexOf(check.mark))));
  const shape = dumpShape(bodies);
  if (shape === undefined) return { format: undefined, undecided: [], columns: [] };
  const { separator, rows, head } = shape;
  const columns = rows[0]!.map((_, c) => rows.map((row) => row[c]!));
  const named = columns.map((cells, c) => hints.columns?.[c] ?? columnField(cells, head?.[c]));
  const settled = settleColumns(named, columns, hints.columns);
  if (!settled.includes("force")) {
    const question = "None of the columns looks like a force: which one is it?";
    return {
      format: undefined,
      undecided: [{ field: "force", question }],
      columns: shownColumns(columns, head, settled),
    };
  }
  const dates = columns.filter((_, c) => settled[c] === "date" || settled[c] === "stamp").flat();
  const found = dateOrder(dates);
  const order = hints.dateOrder ?? found ?? "dmy";
  const undecided: DumpQuestion[] = [];
  if (dates.length > 0 && found === undefined && hints.dateOrder === undefined) undecided.push(dateQuestion(dates[0]!));
  const unit = hints.unit ?? unitOfHead(bodies);
  undecided.push(...unitQuestion(columns, settled, { ...hints, unit }));
  const format: DumpFormat = {
    version: 1,
    name: hints.name ?? "",
    separator,
    fields: settled.map((field, c) => toField(field, columns[c]!, order)),
    ...(unit === undefined ? {} : { unit }),
    ...(hints.massMeansForce === true ? { massMeansForce: true } : {}),
    ...(check === undefined ? {} : { checksum: check }),
    ...announcements(bodies, rows.length, order),
  };
  return { format, undecided, columns: shownColumns(columns, head, settled) };
}

function toField(field: DumpField["field"], cells: readonly string[], order: DateOrder): DumpField {
  if (field === "date" || field === "stamp") return { field, order };
  if (field !== "kind") return { field };
  return { field, words: Object.fromEntries([...new Set(cells)].map((word) => [word, kindOf(word)])) };
}

function shownColumns(
  columns: readonly (readonly string[])[],
  head: readonly string[] | undefined,
  fields: readonly DumpField["field"][],
): LearnedDump["columns"] {
  return columns.map((cells, c) => ({ head: head?.[c], sample: cells[0]!, field: fields[c]! }));
}
