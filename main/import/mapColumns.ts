import type { ImportProblem } from "../../app/contract/importViews.ts";
import { parseForce } from "../../app/quantity/parseForce.ts";
import { type ListField, TAKE } from "./fields.ts";
import { headProblem } from "./problem.ts";
import { type Head, readHead } from "./readHead.ts";
import type { TableRow } from "./Table.ts";

export type MappedColumn = {
  readonly name: string;
  readonly place: number;
  readonly head: Head;
  readonly field: ListField | undefined;
};

/**
 * Which field each column is: as the user said, else as its head says, each field once unless several may be it. A column
 * beside the takes of a check is not proposed for its force: it is most likely their mean.
 */
export function mapColumns(
  columns: readonly string[],
  fields: readonly ListField[],
  said: readonly (string | null)[] | undefined,
): MappedColumn[] {
  const taken = new Set<string>();
  const heads = columns.map(readHead);
  const takes = fields.find((one) => one.field === TAKE);
  const hasTakes = said === undefined && takes !== undefined && heads.some(({ plain }) => takes.heads.test(plain));
  return columns.map((name, place) => {
    const head = heads[place]!;
    const free = (one: ListField) =>
      one.many === true || !(taken.has(one.field) || (hasTakes && one.field === "value"));
    const field =
      said === undefined
        ? fields.find((one) => free(one) && one.heads.test(head.plain))
        : fields.find((one) => one.field === said[place]);
    if (field !== undefined) taken.add(field.field);
    return { name, place, head, field };
  });
}

/** What is wrong with a mapping as a whole: a field twice or missing, a unit that is no force, no unit at all. */
export function mappingProblems(
  columns: readonly MappedColumn[],
  fields: readonly ListField[],
  unit: string | undefined,
  rows: readonly TableRow[],
): ImportProblem[] {
  const problems: ImportProblem[] = [];
  const has = (name: string) => columns.some((c) => c.field?.field === name);
  if (has("value") && has(TAKE)) {
    const name = columns.find((c) => c.field?.field === "value")!.name;
    const why =
      "The force is worked out from its takes: leave out the column that is taken for the force, or the takes.";
    problems.push(headProblem("valueBesideTakes", name, name, why));
  }
  for (const { field, needed, many } of fields) {
    const those = columns.filter((c) => c.field?.field === field);
    if (those.length > 1 && many !== true)
      problems.push(
        headProblem("fieldTwice", those[1]!.name, field, `Two columns are taken for ${field}: leave one out.`),
      );
    if (those.length === 0 && needed && !(field === "value" && has(TAKE)))
      problems.push(
        headProblem("fieldMissing", undefined, field, `No column is taken for ${field}, and it is needed.`),
      );
  }
  for (const { field, head, name, place } of columns) {
    if (field?.form !== "force") continue;
    if (head.wrongUnit !== undefined)
      problems.push(headProblem(head.wrongUnit.code, name, name, `${name}: ${head.wrongUnit.message}.`));
    else if (head.unit === undefined && unit === undefined && !has("unit") && isBare(rows, place))
      problems.push(
        headProblem("unitWanted", name, name, `The head of ${name} names no unit of force: say which one it is.`),
      );
  }
  return problems;
}

/** So far down it is looked for a figure without a unit; further down each is told by its row. */
const LOOKED_AT = 1_000;

/** Whether a column holds a figure that names no unit, or nothing at all. */
function isBare(rows: readonly TableRow[], place: number): boolean {
  const texts = rows.slice(0, LOOKED_AT).map(({ cells }) => (cells[place] ?? "").trim());
  return texts.every((text) => text === "") || texts.some((text) => parseForce(text).kind === "bare");
}
