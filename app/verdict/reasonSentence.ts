import type { Reason } from "./Judgement.ts";

/**
 * One reason of a judgement as one plain English sentence with its figures.
 * @param reason  as `judge` gives it, or as a filed check keeps it
 * @param show  how a force is written; absent: newtons in up to seven digits
 * @returns  the sentence; for a code this program does not know (a check of a newer one) the code itself
 */
export function reasonSentence(reason: Reason, show: (forceN: number) => string = showNewtons): string {
  const sentence = Object.hasOwn(sentences, reason.code) ? sentences[reason.code] : undefined;
  return sentence === undefined ? reason.code : sentence(figuresOf(reason, show));
}

const showNewtons = (forceN: number) => `${Number(forceN.toPrecision(7))} N`;
const percent = (share: number) => `${Number((100 * share).toPrecision(3))} %`;

type Figures = {
  readonly value: string;
  readonly limit: string;
  readonly other: string;
  readonly band: string;
  /** The share the rule speaks at, from the two forces. */
  readonly atShare: string;
  readonly fall: string;
  readonly rise: string;
  /** How the rule came to its answer, empty under `simple`. */
  readonly how: string;
};

function figuresOf(
  { valueN, limitN, otherN, expandedN, share = 0, probability }: Reason,
  show: (forceN: number) => string,
): Figures {
  const shown = (force: number | undefined) => (force === undefined ? "" : show(force));
  const guarded = expandedN === undefined || expandedN === 0 ? "" : ` (guard band ${show(expandedN)})`;
  return {
    value: shown(valueN),
    limit: shown(limitN),
    other: shown(otherN),
    band: shown(expandedN),
    atShare: percent(otherN === undefined || limitN === undefined ? 0 : Math.abs(1 - limitN / otherN)),
    fall: percent(share),
    rise: percent(-share),
    how: probability === undefined ? guarded : ` (probability of conforming ${percent(probability)})`,
  };
}

const moved = (f: Figures) => (f.fall.startsWith("-") ? `risen by ${f.rise}` : `fallen by ${f.fall}`);

const sentences: Readonly<Record<Reason["code"], (f: Figures) => string>> = {
  noValidForce: () => "There is no valid force to judge.",
  noLimits: () => "There is no limit and no baseline to judge the force by.",
  belowMinimum: (f) => `The force of ${f.value} lies below the builder's minimum of ${f.limit}${f.how}.`,
  aboveMaximum: (f) => `The force of ${f.value} lies above the builder's maximum of ${f.limit}${f.how}.`,
  guardedAtMinimum: (f) =>
    `The force of ${f.value} is not far enough above the builder's minimum of ${f.limit} to be accepted${f.how}.`,
  guardedAtMaximum: (f) =>
    `The force of ${f.value} is not far enough below the builder's maximum of ${f.limit} to be accepted${f.how}.`,
  fellFromBaseline: (f) =>
    `The force has fallen by ${f.fall} since the baseline, from ${f.other} to ${f.value}; the rule speaks at ${f.atShare}.`,
  fellFromPrevious: (f) =>
    `The force has fallen by ${f.fall} since the previous check, from ${f.other} to ${f.value}; the rule speaks at ${f.atShare}.`,
  roseFromBaseline: (f) =>
    `The force has risen by ${f.rise} since the baseline, from ${f.other} to ${f.value}; the rule speaks at ${f.atShare}.`,
  roseFromPrevious: (f) =>
    `The force has risen by ${f.rise} since the previous check, from ${f.other} to ${f.value}; the rule speaks at ${f.atShare}.`,
  undecidedAtMinimum: (f) =>
    `The force of ${f.value} is too close to the builder's minimum of ${f.limit} to tell on which side of it the true force lies${f.how}.`,
  undecidedAtMaximum: (f) =>
    `The force of ${f.value} is too close to the builder's maximum of ${f.limit} to tell on which side of it the true force lies${f.how}.`,
  undecidedBetweenLimits: (f) =>
    `The force of ${f.value} cannot be shown to lie between ${f.limit} and ${f.other} with the uncertainty it has${f.how}.`,
  belowWarning: (f) => `The force of ${f.value} lies below the builder's warning limit of ${f.limit}.`,
  withinLimits: (f) =>
    `The force of ${f.value} ${f.other === "" ? `meets the builder's limit of ${f.limit}` : `lies between the builder's limits of ${f.limit} and ${f.other}`}${f.how}.`,
  aboveWarning: (f) => `The force of ${f.value} does not lie below the builder's warning limit of ${f.limit}.`,
  holdsBaseline: (f) =>
    `The force of ${f.value} has ${moved(f)} since the baseline of ${f.other}, less than the ${f.atShare} at which the rule speaks.`,
  holdsPrevious: (f) =>
    `The force of ${f.value} has ${moved(f)} since the previous check of ${f.other}, less than the ${f.atShare} at which the rule speaks.`,
  straddlesMinimum: (f) => `The interval of ±${f.band} about ${f.value} straddles the builder's minimum of ${f.limit}.`,
  straddlesMaximum: (f) => `The interval of ±${f.band} about ${f.value} straddles the builder's maximum of ${f.limit}.`,
  straddlesWarning: (f) =>
    `The interval of ±${f.band} about ${f.value} straddles the builder's warning limit of ${f.limit}.`,
  straddlesCautionFromBaseline: (f) => straddledFall(f, "caution", "baseline"),
  straddlesCautionFromPrevious: (f) => straddledFall(f, "caution", "previous check"),
  straddlesActFromBaseline: (f) => straddledFall(f, "act", "baseline"),
  straddlesActFromPrevious: (f) => straddledFall(f, "act", "previous check"),
  straddlesRiseFromBaseline: (f) =>
    `The interval of ±${f.band} about ${f.value} straddles a rise of ${f.atShare} since the baseline, ${f.limit}.`,
  straddlesRiseFromPrevious: (f) =>
    `The interval of ±${f.band} about ${f.value} straddles a rise of ${f.atShare} since the previous check, ${f.limit}.`,
};

const straddledFall = (f: Figures, limit: string, since: string) =>
  `The interval of ±${f.band} about ${f.value} straddles the ${limit} limit, a fall of ${f.atShare} since the ${since} to ${f.limit}.`;
