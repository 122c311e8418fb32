import type { ChecksumMethod } from "../checksums.ts";
import { agreement, type FoundChecksum, type Trial, trialsOf } from "./checksumTrials.ts";
import { type Cluster, clustersOf, type LineTail, mainCluster, type Row, rowsOf } from "./rows.ts";
import type { SampleLine } from "./sampleLines.ts";
import type { Token } from "./tokens.ts";

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

/** Lines looked at. */
const lineLimit = 2000;

export type ChecksumFinding = { readonly ending: LineTail; readonly found: FoundChecksum; readonly sure: boolean };

/**
 * Looks for a checksum at the end of the lines, over every span between borders of tokens. It is found when most
 * lines fulfil it and that many different ones could not by chance, the number of tries counted. Where the sample
 * has too few different lines, hexadecimal digits behind a mark that fit the whole line are taken for one; not for sure,
 * where all lines were the same.
 */
export function findChecksum(
  lines: readonly SampleLine[],
  split: (line: string) => Token[],
  suffix: string,
): ChecksumFinding | undefined {
  const some = lines.slice(0, lineLimit);
  let likely: ChecksumFinding | undefined;
  for (const form of forms) {
    const ending = { tail: form.tail, suffix };
    const fitting = some.filter(({ text }) => {
      const end = text.length - suffix.length;
      return form.pattern.test(text.slice(end - form.tail, end));
    });
    if (fitting.length < 0.75 * some.length) continue;
    const few = mainCluster(clustersOf(rowsOf(spread(fitting), split, ending)));
    if (few === undefined || !isHopeful(form, few.rows)) continue;
    const cluster = mainCluster(clustersOf(rowsOf(fitting, split, ending)));
    if (cluster === undefined) continue;
    const found = testForm(form, form.methods, cluster.rows);
    if (found !== undefined) return { ending, found, sure: true };
    const natural = form.base === 16 && form.tail === 2 ? testNatural(form, cluster.rows) : undefined;
    if (natural !== undefined) likely ??= { ending, ...natural };
  }
  return likely;
}

/** Tries the whole line, with and without its start byte and the mark before the check. */
function testNatural(
  form: (typeof forms)[number],
  all: readonly Row[],
): { found: FoundChecksum; sure: boolean } | undefined {
  const rows = all.filter((row) => form.pattern.test(row.tail) && /[^0-9A-Za-z]$/.test(row.body));
  if (rows.length < 0.75 * all.length) return undefined;
  const trials = trialsOf(rows, form.base);
  const last = trials[0]!.borders.length - 1;
  const least = 0.7 * trials.reduce((sum, trial) => sum + trial.weight, 0);
  const starts = /^\p{Cc}/u.test(rows[0]!.body) ? [0, 2] : [0];
  for (const method of form.methods) {
    for (const from of starts) {
      for (const to of [last, last - 3]) {
        const found = { method, as: form.as, complement: false, from, to };
        for (const needed of [2, 1])
          if (agreement(found, trials, least, needed) > 0) return { found, sure: needed === 2 };
      }
    }
  }
  return undefined;
}

/** Whether a cluster of another form fulfils the same kind of checksum, and over which span. */
export function sameChecksum(cluster: Cluster, wanted: FoundChecksum): FoundChecksum | undefined {
  const form = forms.find((f) => f.as === wanted.as)!;
  return testForm(form, [wanted.method], cluster.rows);
}

/** A look at a few lines, which spares most streams the whole search: does any span fit half of them? */
function isHopeful(form: (typeof forms)[number], rows: readonly Row[]): boolean {
  const trials = trialsOf(
    rows.filter((row) => form.pattern.test(row.tail)),
    form.base,
  );
  const least = 0.5 * trials.reduce((sum, trial) => sum + trial.weight, 0);
  return spans(form, form.methods, trials).some((check) => agreement(check, trials, least, 1) > 0);
}

/** Every method over every span. */
function spans(
  form: (typeof forms)[number],
  methods: readonly ChecksumMethod[],
  trials: readonly Trial[],
): FoundChecksum[] {
  const last = (trials[0]?.borders.length ?? 1) - 1;
  const all: FoundChecksum[] = [];
  for (const method of methods) {
    for (const complement of form.chance === 10 ? [false, true] : [false]) {
      for (let to = last; to > 0; to -= 1) {
        for (let from = 0; from < to; from += 1) all.push({ method, as: form.as, complement, from, to });
      }
    }
  }
  return all;
}

const spreadLimit = 40;

function spread<T>(list: readonly T[]): readonly T[] {
  if (list.length <= spreadLimit) return list;
  return Array.from({ length: spreadLimit }, (_, i) => list[Math.floor((i * list.length) / spreadLimit)]!);
}

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
  const checks = spans(form, methods, trials);
  // Different lines that must agree: by chance fewer than one search in ten thousand would find as many.
  const needed = Math.max(2, Math.ceil((4 + Math.log10(checks.length)) / Math.log10(form.chance)));
  let best: FoundChecksum | undefined;
  let most = 0.7 * trials.reduce((sum, trial) => sum + trial.weight, 0);
  for (const check of checks) {
    const weight = agreement(check, trials, most, needed);
    if (weight <= most) continue;
    most = weight;
    best = check;
  }
  return best;
}
