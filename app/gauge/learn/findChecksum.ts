import { type ChecksumMethod, checksumOf } from "../checksums.ts";
import { bytesOf } from "../compileFields.ts";
import type { PatternField } from "../linePattern.ts";
import { type Cluster, clustersOf, type LineTail, mainCluster, type Row, rowsOf } from "./rows.ts";
import type { SampleLine } from "./sampleLines.ts";
import type { Token } from "./tokens.ts";

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

const forms = [
  { as: "HEX", tail: 2, pattern: /^[0-9A-F]{2}$/, base: 16, chance: 256, methods: ["xor", "sum256", "negativeSum256"] },
  { as: "hex", tail: 2, pattern: /^[0-9a-f]{2}$/, base: 16, chance: 256, methods: ["xor", "sum256", "negativeSum256"] },
  {
    as: "decimal3",
    tail: 3,
    pattern: /^[012]\d\d$/,
    base: 10,
    chance: 256,
    methods: ["xor", "sum256", "negativeSum256"],
  },
  {
    as: "digit",
    tail: 1,
    pattern: /^\d$/,
    base: 10,
    chance: 10,
    methods: ["byteSum10", "digitSum10", "luhn10", "weight31"],
  },
] as const;

/** Rows looked at: enough for certainty, few enough to stay quick. */
const rowLimit = 240;

/**
 * Looks for a checksum at the end of the lines, over every span between borders of tokens. It is found when most
 * lines fulfil it and that many could not by chance, the number of tries counted.
 */
export function findChecksum(
  lines: readonly SampleLine[],
  split: (line: string) => Token[],
  suffix: string,
): { ending: LineTail; found: FoundChecksum; cluster: Cluster } | undefined {
  const distinct = [...new Map(lines.map((line) => [line.text, line])).values()];
  for (const form of forms) {
    const ending = { tail: form.tail, suffix };
    const fitting = distinct.filter(({ text }) =>
      form.pattern.test(text.slice(text.length - suffix.length - form.tail, text.length - suffix.length)),
    );
    if (fitting.length < 0.75 * distinct.length) continue;
    const cluster = mainCluster(clustersOf(rowsOf(spread(fitting), split, ending)));
    if (cluster === undefined) continue;
    const found = testForm(form, cluster.rows);
    if (found !== undefined) return { ending, found, cluster };
  }
  return undefined;
}

/** Whether a cluster of another form fulfils the same kind of checksum, and over which span. */
export function sameChecksum(cluster: Cluster, wanted: FoundChecksum): FoundChecksum | undefined {
  const form = forms.find((f) => f.as === wanted.as)!;
  return testForm({ ...form, methods: [wanted.method] }, cluster.rows);
}

function testForm(
  form: Omit<(typeof forms)[number], "methods"> & { methods: readonly ChecksumMethod[] },
  all: readonly Row[],
): FoundChecksum | undefined {
  const rows = [...new Map(all.map((row) => [row.body, row])).values()].filter((row) => form.pattern.test(row.tail));
  if (rows.length === 0) return undefined;
  const bytes = rows.map((row) => bytesOf(row.body));
  const borders = rows.map(bordersOf);
  const wanted = rows.map((row) => Number.parseInt(row.tail, form.base));
  const last = borders[0]!.length - 1;
  const tries = form.methods.length * (form.chance === 10 ? 2 : 1) * ((last * (last + 1)) / 2);
  let best: FoundChecksum | undefined;
  let most = 0;
  for (const method of form.methods) {
    for (const complement of form.chance === 10 ? [false, true] : [false]) {
      for (let to = last; to > 0; to -= 1) {
        for (let from = 0; from < to; from += 1) {
          const hits = countHits(
            { method, complement, from, to },
            bytes,
            borders,
            wanted,
            Math.max(most, 0.7 * rows.length),
          );
          if (hits <= most || Math.log10(form.chance) * hits - Math.log10(tries) < 4) continue;
          most = hits;
          best = { method, as: form.as, complement, from, to };
        }
      }
    }
  }
  return best;
}

type Trial = Pick<FoundChecksum, "method" | "complement" | "from" | "to">;

/** How many lines fulfil a trial; gives up, with 0, as soon as fewer than `least` can. */
function countHits(
  trial: Trial,
  bytes: readonly Uint8Array[],
  borders: readonly number[][],
  wanted: readonly number[],
  least: number,
): number {
  let hits = 0;
  let changing = false;
  for (let i = 0; i < bytes.length; i += 1) {
    if (hits + bytes.length - i < least) return 0;
    const value = checksumOf(trial.method, bytes[i]!, borders[i]![trial.from]!, borders[i]![trial.to]!);
    if ((trial.complement ? (10 - value) % 10 : value) !== wanted[i]) continue;
    hits += 1;
    if (wanted[i] !== wanted[0]) changing = true;
  }
  // A constant at the end of every line is no checksum, whatever it happens to equal.
  return hits >= least && changing ? hits : 0;
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

function spread<T>(list: readonly T[]): readonly T[] {
  if (list.length <= rowLimit) return list;
  return Array.from({ length: rowLimit }, (_, i) => list[Math.floor((i * list.length) / rowLimit)]!);
}
