import { labelled } from "./blockCells.ts";
import { columnField } from "./columnField.ts";
import type { DumpField, DumpFormat } from "./DumpFormat.ts";
import { dateOrder } from "./dateOrder.ts";
import { dumpLines } from "./dumpLines.ts";
import { unitQuestion } from "./dumpUnit.ts";
import { kindOf } from "./kindOf.ts";
import type { DumpHints, DumpQuestion, LearnedDump } from "./LearnedDump.ts";

/**
 * A memory whose records stand on several lines each, an empty one between: the lines are told apart by the word they begin
 * with, and each kind of line is read as a column is.
 * @returns  undefined: its records are lines
 */
export function learnBlocks(text: string, hints: DumpHints): LearnedDump | undefined {
  const blocks = dumpLines(text, true).lines.map(({ raw }) => raw.split("\n"));
  const usual = blocks.filter((lines) => lines.length >= 2 && lines.length <= 8);
  if (usual.length < 2 || usual.length < 0.7 * blocks.length) return undefined;
  const cells = Map.groupBy(
    usual.flatMap((lines) => lines.map(labelled)),
    ({ label }) => label,
  );
  const kinds = [...cells].map(([label, lines]) => {
    const samples = lines.map(({ cell }) => cell);
    return { label, samples, field: columnField(samples, label === "" ? undefined : label) };
  });
  const fields: DumpField["field"][] = [...new Set(kinds.map((k) => k.field))].filter((f) => f !== "ignored");
  if (!fields.includes("force")) return undefined;
  const labels = fields.map((field) => kinds.filter((k) => k.field === field).map((k) => k.label));
  const samples = fields.map((field) => kinds.filter((k) => k.field === field).flatMap((k) => k.samples));
  const dates = samples.filter((_, c) => fields[c] === "date" || fields[c] === "stamp").flat();
  const order = hints.dateOrder ?? dateOrder(dates) ?? "dmy";
  const words = labels[fields.indexOf("force")]!;
  const saysKind = words.some((word) => kindOf(word) === "held");
  const format: DumpFormat = {
    version: 1,
    name: hints.name ?? "",
    separator: "lines",
    fields: [
      ...fields.map((field): DumpField => (field === "date" || field === "stamp" ? { field, order } : plain(field))),
      ...(saysKind
        ? [{ field: "kind" as const, words: Object.fromEntries(words.map((word) => [word, kindOf(word)])) }]
        : []),
    ],
    labels: [...labels, ...(saysKind ? [words.map((word) => `=${word}`)] : [])],
    ...(hints.unit === undefined ? {} : { unit: hints.unit }),
    ...(hints.massMeansForce === true ? { massMeansForce: true } : {}),
  };
  const undecided: DumpQuestion[] = unitQuestion(samples, fields, hints);
  if (dates.length > 0 && dateOrder(dates) === undefined && hints.dateOrder === undefined)
    undecided.unshift(dateQuestion(dates[0]!));
  const columns = fields.map((field, c) => ({ head: labels[c]![0], sample: samples[c]![0]!, field }));
  return { format, undecided, columns };
}

/** Asked where every date can be read both ways. */
export const dateQuestion = (sample: string): DumpQuestion => ({
  field: "dateOrder",
  question: `Is ${sample} day before month, or month before day? Every date of this memory can be read both ways.`,
  proposal: "dmy",
});

const plain = (field: Exclude<DumpField["field"], "date" | "stamp">): DumpField =>
  field === "kind" ? { field, words: {} } : { field };
