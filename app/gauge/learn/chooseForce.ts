import { type Column, progressOfColumn, unitOf, valuesOf } from "./columns.ts";
import type { Progress } from "./progress.ts";
import type { Row } from "./rows.ts";
import { meaningOf } from "./vocabulary.ts";

/** Which number of a line is the force, where its unit stands, and what the other numbers are. */
export type Choice = {
  readonly force: Column;
  readonly unit: Column | undefined;
  /** A word right behind a force without a unit, which is no force unit. */
  readonly beside: string | undefined;
  readonly progress: ReadonlyMap<Column, Progress>;
  /** More than one number could be it. */
  readonly doubtful: boolean;
  /** The only number counts up line by line. */
  readonly countsUp: boolean;
  /** Torque units stand where the force's should. */
  readonly torque: string | undefined;
};

type Candidate = {
  readonly column: Column;
  readonly before: Column | undefined;
  readonly unit: Column | undefined;
  readonly kind: "force" | "mass" | "torque" | undefined;
};

const otherUnits =
  /^(deg|degC|degF|C|K|V|mV|A|mA|bar|mbar|psi|PSI|kPa|MPa|Pa|mm|um|cm|m|ms|us|s|sec|min|h|Hz|kHz|rpm|RPM|pct|MS|SEC)$/;

/** Separates the force from counters, clocks, maxima and whatever else a line carries; undefined without any number. */
export function chooseForce(columns: readonly Column[], rows: readonly Row[]): Choice | undefined {
  const numbers = columns.filter((column) => column.kind === "number");
  const progress = new Map<Column, Progress>();
  for (const column of columns) {
    if (column.kind !== "number" && column.kind !== "clock") continue;
    // A maximum that rises by a step or two would look like a coarse clock.
    if (numbers.some((other) => isMaximumOf(column, other))) continue;
    const found = progressOfColumn(column, rows);
    if (found !== undefined) progress.set(column, found);
  }
  // A counter or a clock owns no unit: in "17 kN 12.34" it is the next number's.
  const owners = numbers.filter((column) => !progress.has(column) && !hangsOn(column, columns[column.index - 1]));
  const candidates = (owners.length > 0 ? owners : numbers)
    .map((column) => candidateOf(column, columns, progress))
    .filter((c) => c !== undefined);
  const torque = candidates.filter((c) => c.kind === "torque");
  const named = candidates.filter((c) => c.kind === "force" || c.kind === "mass");
  if (named.length === 0 && torque.length > 0) {
    const column = torque[0]!.column;
    return {
      force: column,
      unit: torque[0]!.unit,
      beside: undefined,
      progress,
      doubtful: false,
      countsUp: false,
      torque: torque[0]!.unit!.typical,
    };
  }
  const bare = candidates.filter((c) => c.kind === undefined);
  // A unit that stands apart, as in "12.34;ST;kN", is the force's when nothing nearer has one.
  const apart = columns.find(
    (column) => column.kind === "word" && column.typical.length > 1 && unitOf(column)?.kind === "force",
  );
  if (named.length === 0 && apart !== undefined) {
    const choice = fromBare(bare, columns, progress);
    return choice === undefined ? undefined : { ...choice, unit: apart };
  }
  return named.length > 0 ? fromNamed(named, bare, progress) : fromBare(bare, columns, progress);
}

/** A number with its unit, behind it or before it; undefined for what a foreign unit or a per cent sign marks. */
function candidateOf(
  column: Column,
  columns: readonly Column[],
  progress: ReadonlyMap<Column, Progress>,
): Candidate | undefined {
  const next = columns[column.index + 1];
  const previous = columns[column.index - 1];
  if (next?.kind === "mark" && next.constant === "%") return undefined;
  const behind = unitOf(next);
  if (behind !== undefined) return { column, before: previous, unit: next, kind: behind.kind };
  if (next?.constant !== undefined && next.kind === "word" && otherUnits.test(next.constant)) return undefined;
  // "12.34;kN": a separator stands between.
  const far = columns[column.index + 2];
  if (next?.kind === "mark" && /^[;,:|/()[\]]$/.test(next.constant!)) {
    const beyond = unitOf(far);
    if (beyond !== undefined) return { column, before: previous, unit: far, kind: beyond.kind };
  }
  const ahead = unitOf(previous);
  // The unit of the number before this one is not this one's.
  const owner = columns[column.index - 2];
  const isUnit = ahead !== undefined && (ahead.kind !== "mass" || previous!.typical.length > 1); // "G 12.3" is no gram
  if (isUnit && (owner?.kind !== "number" || progress.has(owner)))
    return { column, before: previous, unit: previous, kind: ahead.kind };
  return { column, before: previous, unit: undefined, kind: undefined };
}

function fromNamed(
  named: readonly Candidate[],
  bare: readonly Candidate[],
  progress: ReadonlyMap<Column, Progress>,
): Choice {
  const live = named.filter(
    (c) =>
      !(labelled(c.column) && named.length + bare.length > 1) &&
      !named.concat(bare).some((other) => isMaximumOf(c.column, other.column)),
  );
  const first = live[0] ?? named[0]!;
  // "12.3 15.0 kN": the unit at the end holds for both, and the one without a word is the live figure.
  const partner = bare.find(
    (c) => sameForm(c.column, first.column) && isMaximumOf(first.column, c.column) && !progress.has(c.column),
  );
  const same = named.filter((c) => sameFigures(c.column, first.column));
  const doubtful = (live.length > 1 && same.length < live.length && !partner) || isFraction(first.column, first.before);
  const base = { unit: first.unit, beside: undefined, progress, countsUp: false, torque: undefined };
  return partner === undefined
    ? { ...base, force: first.column, doubtful }
    : { ...base, force: partner.column, doubtful: false };
}

/** "17,60" with commas between the columns as well: what looks like a number of its own may be decimals. */
function isFraction(column: Column, mark: Column | undefined): boolean {
  const lengths = new Set(column.tokens.map((token) => token.text.length));
  const zeros = column.tokens.some((token) => token.text.length > 1 && token.text.startsWith("0"));
  return (
    mark?.constant === "," && lengths.size === 1 && zeros && !column.tokens.some((token) => token.number!.sign !== "")
  );
}

function fromBare(
  bare: readonly Candidate[],
  all: readonly Column[],
  progress: ReadonlyMap<Column, Progress>,
): Choice | undefined {
  const columns = bare.map((c) => c.column);
  const free = columns.filter((column) => !progress.has(column));
  const pool = free.length > 0 ? free : columns;
  if (pool.length === 0) return undefined;
  const open = pool.filter((c) => !(labelled(c) && bare.length > 1));
  const live = open.filter((column) => !open.some((other) => isMaximumOf(column, other)));
  const ranked = [...(live.length > 0 ? live : open.length > 0 ? open : pool)].sort((a, b) => weight(b) - weight(a));
  const force = ranked[0]!;
  const doubtful = ranked.length > 1 && weight(ranked[1]!) >= 0.2 * weight(force);
  const next = all[force.index + 1];
  const beside = next?.kind === "word" ? next.constant : undefined;
  return { force, unit: undefined, beside, progress, doubtful, countsUp: free.length === 0, torque: undefined };
}

/** How much a column looks like a measured figure: decimals, signs, filled digits, and many different values. */
function weight(column: Column): number {
  const numbers = column.tokens.map((token) => token.number!);
  const share = (test: (i: number) => boolean) => numbers.filter((_, i) => test(i)).length / numbers.length;
  const different = Math.min(30, new Set(valuesOf(column)).size);
  return different + 20 * share((i) => numbers[i]!.decimals !== "") + 20 * share((i) => numbers[i]!.sign !== "");
}

/** Whether `column` is the running maximum of `live`: never below it, and rising only to meet it. */
function isMaximumOf(column: Column, live: Column): boolean {
  if (column === live || column.kind !== "number" || live.kind !== "number") return false;
  const top = valuesOf(column);
  const now = valuesOf(live);
  let holds = 0;
  let ahead = 0;
  let rises = 0;
  let met = 0;
  for (let i = 1; i < top.length; i += 1) {
    const running = Math.max(top[i - 1]!, now[i]!);
    if (top[i]! >= now[i]! && (top[i] === running || top[i] === now[i])) holds += 1;
    if (top[i]! > now[i]!) ahead += 1;
    if (top[i]! > top[i - 1]!) rises += 1;
    if (top[i]! > top[i - 1]! && top[i] === now[i]) met += 1;
  }
  return top.length > 2 && ahead > 0 && holds >= 0.8 * (top.length - 1) && met >= 0.6 * rises;
}

const sameForm = (a: Column, b: Column) => a.mark === b.mark;
const sameFigures = (a: Column, b: Column) => ratioSteady(valuesOf(a), valuesOf(b));

/** One force in two units: their ratio stays, up to the rounding of both. */
function ratioSteady(a: readonly number[], b: readonly number[]): boolean {
  const top = a.reduce((best, value, i) => (Math.abs(value) > Math.abs(a[best]!) ? i : best), 0);
  if (b[top] === 0 || a[top] === 0) return false;
  const ratio = a[top]! / b[top]!;
  const off = a.filter((value, i) => Math.abs(value - ratio * b[i]!) > 0.02 * Math.abs(a[top]!));
  return off.length <= 0.1 * a.length;
}

/** "CH1", "G07": a number that never changes and hangs on a word is part of its name. */
export const hangsOn = (column: Column, previous: Column | undefined): boolean =>
  previous?.kind === "word" && column.constant !== undefined && column.before.every((blanks) => blanks === 0);

const labelled = (column: Column) => column.label !== undefined && meaningOf(column.label) === "held";
