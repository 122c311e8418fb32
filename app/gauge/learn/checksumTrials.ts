import { type ChecksumMethod, checksumOf } from "../checksums.ts";
import { bytesOf } from "../compileFields.ts";
import type { PatternField } from "../linePattern.ts";
import type { Row } from "./rows.ts";

type CheckField = Extract<PatternField, { field: "checksum" }>;

/**
 * A checksum that was found to hold. Its span runs between two borders of the line's tokens: border 2k is where the
 * blanks before token k begin, 2k + 1 where the token does.
 */
export type FoundChecksum = {
  readonly method: ChecksumMethod;
  readonly as: CheckField["as"];
  readonly complement: boolean;
  readonly from: number;
  readonly to: number;
};

/** Different lines tried: enough for certainty, few enough to stay quick. */
const trialLimit = 240;

/** A line under test; lines that came several times weigh as much, for a damaged one never comes twice. */
export type Trial = {
  readonly bytes: Uint8Array;
  readonly borders: readonly number[];
  readonly wanted: number;
  weight: number;
};

/** Weight of the lines that fulfil a checksum; 0 as soon as it cannot pass `least`, or with fewer different spans than needed. */
export function agreement(check: FoundChecksum, trials: readonly Trial[], least: number, needed: number): number {
  let open = trials.reduce((sum, trial) => sum + trial.weight, 0);
  let weight = 0;
  for (const trial of trials) {
    if (weight + open <= least) return 0;
    open -= trial.weight;
    if (holds(check, trial)) weight += trial.weight;
  }
  return weight > least && isVaried(check, trials, needed) ? weight : 0;
}

/**
 * Whether enough different spans agree. Spans are compared, not lines: a counter outside the span would make one quiet
 * value look like many proofs. What disagrees again and again with the same text is no damaged line but the
 * proof that there is no such checksum.
 */
function isVaried(check: FoundChecksum, trials: readonly Trial[], needed: number): boolean {
  const agreed = new Set<string>();
  const disagreed = new Map<string, number>();
  for (const trial of trials) {
    const text = String.fromCharCode(
      ...trial.bytes.subarray(trial.borders[check.from]!, trial.borders[check.to]!),
      trial.wanted,
    );
    if (holds(check, trial)) agreed.add(text);
    else disagreed.set(text, (disagreed.get(text) ?? 0) + trial.weight);
  }
  const often = [...disagreed.values()].filter((n) => n >= 3).length;
  return agreed.size >= needed && often <= 0.1 * agreed.size;
}

function holds(check: FoundChecksum, { bytes, borders, wanted }: Trial): boolean {
  const value = checksumOf(check.method, bytes, borders[check.from]!, borders[check.to]!);
  return (check.complement ? (10 - value) % 10 : value) === wanted;
}

/** The different lines, those that came most often first. */
export function trialsOf(rows: readonly Row[], base: number): Trial[] {
  const byText = new Map<string, Trial>();
  for (const row of rows) {
    const known = byText.get(row.body + row.tail);
    if (known !== undefined) known.weight += 1;
    else {
      const wanted = Number.parseInt(row.tail, base);
      byText.set(row.body + row.tail, { bytes: bytesOf(row.body), borders: bordersOf(row), wanted, weight: 1 });
    }
  }
  return [...byText.values()].sort((a, b) => b.weight - a.weight).slice(0, trialLimit);
}

function bordersOf(row: Row): number[] {
  const borders: number[] = [];
  let end = 0;
  for (const token of row.tokens) {
    borders.push(end, token.at);
    end = token.end;
  }
  borders.push(end, row.body.length);
  return borders;
}
