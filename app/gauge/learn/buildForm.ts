import type { ForceUnit } from "../../quantity/forceUnits.ts";
import type { OpenQuestion } from "../learnPattern.ts";
import type { PatternField } from "../linePattern.ts";
import { assemble, type Piece } from "./assemble.ts";
import { blanksField } from "./blanksField.ts";
import type { FoundChecksum } from "./checksumTrials.ts";
import { type Choice, chooseForce } from "./chooseForce.ts";
import { blanksBefore, type Column, columnsOf, unitsOf } from "./columns.ts";
import { established } from "./established.ts";
import { forceField, type LearnedForce } from "./forceField.ts";
import { plainField } from "./plainField.ts";
import type { Cluster } from "./rows.ts";
import { timeField } from "./timeField.ts";
import type { NumberMode } from "./tokens.ts";

/** What holds for every form of the stream. */
export type FormContext = {
  readonly mode: NumberMode;
  readonly checksum: FoundChecksum | undefined;
  /** Characters at the line's end that look like a check but follow no known rule. */
  readonly blindTail: number;
  readonly suffix: string;
  readonly rateHz: number | undefined;
};

export type LearnedForm = {
  readonly fields: readonly PatternField[];
  readonly choice: Choice;
  readonly rateHz: number | undefined;
  readonly questions: readonly OpenQuestion[];
};

/** Turns a cluster of lines that hold a force into the fields of a pattern; undefined when no number could be it. */
export function buildForm(cluster: Cluster, context: FormContext): LearnedForm | undefined {
  const columns = columnsOf(cluster);
  const choice = chooseForce(columns, cluster.rows);
  return choice === undefined ? undefined : { ...formOf(cluster, columns, choice, context), choice };
}

/** The same for lines that hold none: every number in them is passed over. */
export function buildAside(cluster: Cluster, context: FormContext): readonly PatternField[] {
  const nothing = { force: undefined, unit: undefined, progress: new Map() };
  return formOf(cluster, columnsOf(cluster), nothing, context).fields;
}

type Chosen = Pick<Choice, "unit" | "progress"> & { readonly force: Column | undefined };

function formOf(
  cluster: Cluster,
  columns: readonly Column[],
  choice: Chosen,
  context: FormContext,
): Omit<LearnedForm, "choice"> {
  const force = choice.force === undefined ? undefined : forceOf(cluster, columns, choice.force, choice.unit, context);
  const questions: OpenQuestion[] = [];
  const pieces: Piece[] = [];
  let rateHz: number | undefined;
  for (let index = 0; index <= columns.length; index += 1) {
    const column = columns[index];
    const takesBefore = force?.takesBefore === true && column === choice.force;
    const takesAfter = force?.takesAfter === true && columns[index - 1] === choice.force;
    if (!takesBefore && !takesAfter)
      pieces.push(...blanksField(cluster, index).map((field) => ({ field, border: 2 * index })));
    if (column === undefined) continue;
    // Padding that is part of the number moves its border to where the padding begins.
    const border = takesBefore ? 2 * index : 2 * index + 1;
    const learned = column === choice.force ? { field: force!.field } : columnField(column, columns, choice, context);
    pieces.push({ field: learned.field, border });
    if (learned.question !== undefined) questions.push(learned.question);
    rateHz ??= learned.rateHz;
  }
  return { fields: assemble(pieces, context), rateHz, questions };
}

type LearnedColumn = { readonly field: PatternField; readonly question?: OpenQuestion; readonly rateHz?: number };

function columnField(column: Column, columns: readonly Column[], choice: Chosen, context: FormContext): LearnedColumn {
  if (column === choice.unit) return { field: unitField(column) };
  const progress = choice.progress.get(column);
  if (column.kind === "clock" || progress !== undefined) {
    const next = columns[column.index + 1];
    return timeField(column, progress, next?.kind === "word" ? next.constant : undefined, context.rateHz);
  }
  return plainField(column, columns, choice.force);
}

/** Units a gauge for clamping forces is switched to; rarer ones only where they were seen: kN is one damaged letter from MN. */
const usualUnits: readonly ForceUnit[] = ["N", "daN", "kN", "lbf", "kip", "kgf"];

function unitField(column: Column): PatternField {
  const seen = established(unitsOf(column).filter((unit) => unit !== undefined)).keys();
  return { field: "unit", units: [...new Set([...seen, ...usualUnits])], optional: false };
}

function forceOf(
  cluster: Cluster,
  columns: readonly Column[],
  force: Column,
  unit: Column | undefined,
  context: FormContext,
): LearnedForce {
  const numbers = force.tokens.map((token) => token.number!);
  // Where the sign stands behind the digits, a blank there is a plus and part of the number.
  const plus = numbers.filter((number) => number.signAfter).length >= Math.max(2, 0.02 * numbers.length);
  const extra = numbers.map((number) => (plus && number.sign === "" ? 1 : 0));
  const border = 2 * force.index + 1;
  const learned = forceField({
    numbers,
    lengths: force.tokens.map((token, i) => token.end - token.at + extra[i]!),
    before: force.before,
    after: cluster.rows.map((row, i) => Math.max(0, blanksBefore(row, force.index + 1) - extra[i]!)),
    units: unit === undefined ? [] : unitsOf(unit),
    startsLine: force.index === 0,
    followed: force.index < columns.length - 1 || context.checksum !== undefined || context.suffix !== "",
    apart: context.checksum !== undefined && (context.checksum.from === border || context.checksum.to === border),
  });
  if (!numbers.some((number) => number.grouped) || context.mode.thousands === "") return learned;
  return { ...learned, field: { ...learned.field, thousands: context.mode.thousands } };
}
