import { parseForceUnit } from "../../quantity/parseForceUnit.ts";
import type { LearnHints } from "../learnPattern.ts";
import { type LinePattern, linePatternSchema } from "../linePattern.ts";
import { buildForm, type FormContext, type LearnedForm } from "./buildForm.ts";
import { chooseMode } from "./chooseMode.ts";
import { unitOf } from "./columns.ts";
import { findChecksum } from "./findChecksum.ts";
import { type Nothing, nothing, type Sample, type Torque } from "./readSample.ts";
import { type Cluster, clustersOf, type LineTail, mainCluster, rowsOf } from "./rows.ts";
import type { SampleLine } from "./sampleLines.ts";
import { tokenizer } from "./tokens.ts";

export type MainForm = {
  readonly pattern: LinePattern;
  readonly form: LearnedForm;
  readonly cluster: Cluster;
  readonly context: FormContext;
  readonly ending: LineTail;
  /** Whether the end of the lines is understood: by no known rule, by one that too few lines prove, or as it stands. */
  readonly check: "unknown" | "unsure" | "settled";
};

/** Learns how most lines of the sample are written. */
export function mainForm(sample: Sample, hints: LearnHints): MainForm | Torque | Nothing {
  const { lines } = sample;
  const mode = chooseMode(lines);
  const split = tokenizer(mode);
  const suffix = commonSuffix(lines);
  const checked = findChecksum(lines, split, suffix);
  const blindTail = checked === undefined ? blindTailOf(lines, suffix) : 0;
  const ending = checked?.ending ?? { tail: blindTail, suffix };
  const cluster = mainCluster(clustersOf(rowsOf(lines, split, ending)));
  if (cluster === undefined) return nothing("no line of the sample holds a number", true);
  const context: FormContext = { mode, checksum: checked?.found, blindTail, suffix, rateHz: hints.rateHz };
  const form = buildForm(cluster, context);
  if (form === undefined) return nothing("no number of the lines could be a force", true);
  if (form.choice.torque !== undefined) return torqueOf(form.choice.torque);
  const fields = [...form.fields];
  const pattern = linePatternSchema.parse({
    version: 1,
    fields,
    terminator: sample.ends.terminator,
    parity: sample.parity,
    fill: sample.ends.fill,
    afterEnd: sample.ends.afterEnd,
    ...(form.choice.unit === undefined && hints.unit !== undefined ? { unit: hints.unit } : {}),
    massMeansForce: unitOf(form.choice.unit)?.kind === "mass" && hints.unit !== undefined,
    ...rateOf(form, hints),
  });
  return {
    pattern,
    form,
    cluster,
    context,
    ending,
    check: blindTail > 0 ? "unknown" : checked?.sure === false ? "unsure" : "settled",
  };
}

/** A pattern with its open questions answered by what is likely, to decode the sample by before they are. */
export const trialOf = (pattern: LinePattern, form: LearnedForm): LinePattern => ({
  ...pattern,
  ...(form.choice.unit === undefined ? { unit: pattern.unit ?? "N" } : {}),
  massMeansForce: unitOf(form.choice.unit)?.kind === "mass",
});

function torqueOf(text: string): Torque {
  const meaning = parseForceUnit(text);
  return {
    kind: "torque",
    unit: text,
    reason: meaning.kind === "torque" ? meaning.reason : `${text} is a unit of torque`,
  };
}

function rateOf(form: LearnedForm, hints: LearnHints): { rateHz?: number } {
  const rateHz = hints.rateHz ?? form.rateHz;
  return rateHz === undefined || rateHz > 100_000 ? {} : { rateHz };
}

/** Control characters that nearly all lines end in. */
function commonSuffix(lines: readonly SampleLine[]): string {
  const counts = new Map<string, number>();
  for (const { text } of lines) {
    const suffix = /\p{Cc}*$/u.exec(text)![0];
    counts.set(suffix, (counts.get(suffix) ?? 0) + 1);
  }
  for (const [suffix, n] of counts) if (n >= 0.75 * lines.length) return suffix;
  return "";
}

/** Length of a hexadecimal tail that no known rule explains, or 0: behind a mark, letters and digits mixed, hardly twice the same. */
function blindTailOf(lines: readonly SampleLine[], suffix: string): number {
  for (const [length, pattern] of [
    [2, /[^0-9A-Za-z. ]([0-9A-F]{2}|[0-9a-f]{2})$/],
    [4, /[^0-9A-Za-z.]([0-9A-F]{4}|[0-9a-f]{4})$/],
  ] as const) {
    const tails = lines
      .map(({ text }) => pattern.exec(text.slice(0, text.length - suffix.length))?.[1])
      .filter((tail) => tail !== undefined);
    const mixed = tails.filter((tail) => /[A-Fa-f]/.test(tail)).length;
    if (tails.length < 0.75 * lines.length || mixed < 0.2 * tails.length || mixed > 0.98 * tails.length) continue;
    if (new Set(tails).size >= Math.min(12, 0.3 * tails.length)) return length;
  }
  return 0;
}
