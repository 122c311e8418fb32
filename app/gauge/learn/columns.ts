import type { ForceUnit } from "../../quantity/forceUnits.ts";
import { parseForceUnit, type UnitMeaning } from "../../quantity/parseForceUnit.ts";
import { mode, shared } from "./established.ts";
import { type Progress, progressOf } from "./progress.ts";
import type { Cluster, Row } from "./rows.ts";
import type { Token } from "./tokens.ts";

/** One place of a cluster's lines, over all its rows. */
export type Column = {
  readonly index: number;
  readonly kind: Token["kind"];
  readonly tokens: readonly Token[];
  /** The text of every row, when it is one and the same. */
  readonly constant: string | undefined;
  /** Blanks before it. */
  readonly before: readonly number[];
  /** The text most rows have; of numbers and clock times the decimal mark most have, or "". */
  readonly typical: string;
  readonly mark: "" | "." | ",";
  /** Of a number: the unchanging word before it ("MAX", "F="), which names it. */
  readonly label: string | undefined;
};

export function columnsOf(cluster: Cluster): Column[] {
  const { rows } = cluster;
  return rows[0]!.tokens.map((first, index) => {
    const tokens = rows.map((row) => row.tokens[index]!);
    return {
      index,
      kind: first.kind,
      tokens,
      constant:
        first.kind === "mark"
          ? first.text
          : shared(
              tokens.map((token) => token.text),
              0.97,
            ),
      before: rows.map((row) => blanksBefore(row, index)),
      typical: mode(tokens.map((token) => token.text))!,
      mark: mode(tokens.map(markOf))!,
      label: first.kind === "number" ? labelOf(rows, index) : undefined,
    };
  });
}

function markOf({ number, text }: Token): "" | "." | "," {
  if (number !== undefined) return number.mark;
  return text.includes(",") ? "," : text.includes(".") ? "." : "";
}

/** The word before a number, over one mark such as = or : at most. */
function labelOf(rows: readonly Row[], index: number): string | undefined {
  const tokens = rows[0]!.tokens;
  const at = tokens[index - 1]?.kind === "mark" && /^[=:]$/.test(tokens[index - 1]!.text) ? index - 2 : index - 1;
  if (tokens[at]?.kind !== "word") return undefined;
  return shared(
    rows.map((row) => row.tokens[at]!.text),
    0.97,
  );
}

/** Blanks between a row's token and the one before it; with the count of tokens, those at the line's end. */
export function blanksBefore(row: Row, index: number): number {
  const end = index === 0 ? 0 : row.tokens[index - 1]!.end;
  return (index === row.tokens.length ? row.body.length : row.tokens[index]!.at) - end;
}

/** What a column of words says as a unit: what most of its words mean. */
export function unitOf(column: Column | undefined): Exclude<UnitMeaning, { kind: "unknown" }> | undefined {
  if (column === undefined || column.kind !== "word") return undefined;
  const counts = new Map<string, number>();
  for (const { text } of column.tokens) counts.set(text, (counts.get(text) ?? 0) + 1);
  const votes = { force: 0, mass: 0, torque: 0, unknown: 0 };
  const meanings = [...counts].sort((a, b) => b[1] - a[1]).map(([text]) => parseForceUnit(text));
  [...counts.values()]
    .sort((a, b) => b - a)
    .forEach((n, i) => {
      votes[meanings[i]!.kind] += n;
    });
  if (votes.unknown > 0.3 * column.tokens.length) return undefined;
  const kind = (["force", "mass", "torque"] as const).reduce((best, next) => (votes[next] > votes[best] ? next : best));
  return meanings.filter((meaning) => meaning.kind !== "unknown").find((meaning) => meaning.kind === kind);
}

/** The force unit each row of a column of words names. */
export function unitsOf(column: Column): (ForceUnit | undefined)[] {
  const known = new Map<string, ForceUnit | undefined>();
  return column.tokens.map(({ text }) => {
    if (!known.has(text)) {
      const meaning = parseForceUnit(text);
      known.set(text, meaning.kind === "force" || meaning.kind === "mass" ? meaning.unit : undefined);
    }
    return known.get(text);
  });
}

export const valuesOf = (column: Column): number[] => column.tokens.map((token) => token.number!.value);

/** How a column of numbers or clock times goes on from line to line. */
export function progressOfColumn(column: Column, rows: readonly Row[]): Progress | undefined {
  const values = column.kind === "clock" ? column.tokens.map((token) => secondsOf(token.text)) : valuesOf(column);
  return progressOf(
    values,
    rows.map((row) => row.order),
  );
}

function secondsOf(text: string): number {
  const [hours, minutes, seconds] = text.replace(",", ".").split(":").map(Number);
  return hours! * 3600 + minutes! * 60 + (seconds ?? 0);
}
