import type { ImportProblem } from "../../app/contract/importViews.ts";
import type { ListField } from "./fields.ts";
import { headProblem } from "./problem.ts";
import { type Head, readHead } from "./readHead.ts";

export type MappedColumn = {
  readonly name: string;
  readonly place: number;
  readonly head: Head;
  readonly field: ListField | undefined;
};

/** Which field each column is: as the user said, else as its head says, each field once. */
export function mapColumns(
  columns: readonly string[],
  fields: readonly ListField[],
  said: readonly (string | null)[] | undefined,
): MappedColumn[] {
  const taken = new Set<string>();
  return columns.map((name, place) => {
    const head = readHead(name);
    const field =
      said === undefined
        ? fields.find((one) => !taken.has(one.field) && one.heads.test(head.plain))
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
): ImportProblem[] {
  const problems: ImportProblem[] = [];
  const has = (name: string) => columns.some((c) => c.field?.field === name);
  for (const { field, needed } of fields) {
    const those = columns.filter((c) => c.field?.field === field);
    if (those.length > 1)
      problems.push(
        headProblem("fieldTwice", those[1]!.name, field, `Two columns are taken for ${field}: leave one out.`),
      );
    if (those.length === 0 && needed)
      problems.push(
        headProblem("fieldMissing", undefined, field, `No column is taken for ${field}, and it is needed.`),
      );
  }
  for (const { field, head, name } of columns) {
    if (field?.form !== "force") continue;
    if (head.wrongUnit !== undefined)
      problems.push(headProblem(head.wrongUnit.code, name, name, `${name}: ${head.wrongUnit.message}.`));
    else if (head.unit === undefined && unit === undefined && !has("unit"))
      problems.push(
        headProblem("unitWanted", name, name, `The head of ${name} names no unit of force: say which one it is.`),
      );
  }
  return problems;
}
