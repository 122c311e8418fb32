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

/** Lines looked at, and different ones tried: enough for certainty, few enough to stay quick. */
const lineLimit = 2000;
const trialLimit = 240;

/**
 * Looks for a checksum at the end of the lines, over every span between borders of tokens. It is found when most
 * lines fulfil it and that many different ones could not by chance, the number of tries counted.
 */
export function findChecksum(
  lines: readonly SampleLine[],
  split: (line: string) => Token[],
  suffix: string,
): { ending: LineTail; found: FoundChecksum } | undefined {
  const some = lines.slice(0, lineLimit);
  for (const form of forms) {
    const ending = { tail: form.tail, suffix };
    const fitting = some.filter(({ text }) => {
      const end = text.length - suffix.length;
      return form.pattern.test(text.slice(end - form.tail, end));
    });
    if (fitting.length < 0.75 * some.length) continue;
    const cluster = mainCluster(clustersOf(rowsOf(fitting, split, ending)));
    const found = cluster === undefined ? undefined : testForm(form, form.methods, cluster.rows);
    if (found !== undefined) return { ending, found };
  }
  return undefined;
}

/** Whether a cluster of another form fulfils the same kind of checksum, and over which span. */
export function sameChecksum(cluster: Cluster, wanted: FoundChecksum): FoundChecksum | undefined {
  const form = forms.find((f) => f.as === wanted.as)!;
  return testForm(form, [wanted.method], cluster.rows);
}

/** A line under test; lines that came several times weigh as much, for a damaged one never comes twice. */
type Trial = {
  readonly bytes: Uint8Array;
  readonly borders: readonly number[];
  readonly wanted: number;
  weight: number;
};

function testForm(
  form: (typeof forms)[number],
  methods: readonly ChecksumMethod[],
  rows: readonly Row[],
): FoundChecksum | undefined {
  const trials = trialsOf(
    rows.filter((row) => form.pattern.test(row.tail)),
    form.base,
  );
  // A constant at the end of every line is no checksum, whatever it happens to equal.
  if (trials.every((trial) => trial.wanted === trials[0]!.wanted)) return undefined;
  const complements = form.chance === 10 ? [false, true] : [false];
  const last = trials[0]!.borders.length - 1;
  const tries = methods.length * complements.length * ((last * (last + 1)) / 2);
  // Different lines that must agree: by chance fewer than one search in ten thousand would find as many.
  const needed = Math.max(2, Math.ceil((4 + Math.log10(tries)) / Math.log10(form.chance)));
  let best: FoundChecksum | undefined;
  let most = 0.7 * trials.reduce((sum, trial) => sum + trial.weight, 0);
  for (const method of methods) {
    for (const complement of complements) {
      for (let to = last; to > 0; to -= 1) {
        for (let from = 0; from < to; from += 1) {
          const weight = agreement({ method, as: form.as, complement, from, to }, trials, most, needed);
          if (weight <= most) continue;
          most = weight;
          best = { method, as: form.as, complement, from, to };
        }
      }
    }
  }
  return best;
}

/** Weight of the lines that fulfil a checksum; 0 as soon as it cannot pass `least`, or with fewer different ones than needed. */
function agreement(check: FoundChecksum, trials: readonly Trial[], least: number, needed: number): number {
  let open = trials.reduce((sum, trial) => sum + trial.weight, 0);
  let weight = 0;
  let different = 0;
  for (const { bytes, borders, wanted, weight: own } of trials) {
    if (weight + open <= least) return 0;
    open -= own;
    const value = checksumOf(check.method, bytes, borders[check.from]!, borders[check.to]!);
    if ((check.complement ? (10 - value) % 10 : value) !== wanted) continue;
    weight += own;
    different += 1;
  }
  return different >= needed ? weight : 0;
}

/** The different lines, those that came most often first. */
function trialsOf(rows: readonly Row[], base: number): Trial[] {
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
