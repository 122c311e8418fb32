import type { ForceUnit } from "../quantity/forceUnits.ts";
import type { Reason } from "../verdict/Judgement.ts";
import { type Figures, reasonSentences } from "./reasonSentences.ts";
import type { Speech } from "./Speech.ts";

/** A filed reason carries its code as plain text: an older or newer program may have written it. */
type ReasonView = Omit<Reason, "code"> & { readonly code: string };

/**
 * Why, as one plain sentence in the reader's language.
 * @param uncertaintyN  the value's own expanded uncertainty, named with it where it is known
 */
export function reasonSentence(reason: ReasonView, speech: Speech, unit: ForceUnit, uncertaintyN?: number): string {
  const sentence = Object.hasOwn(reasonSentences, reason.code)
    ? reasonSentences[reason.code as Reason["code"]] // just found there
    : undefined;
  return sentence === undefined
    ? reason.code
    : sentence[speech.language](figuresOf(reason, speech, unit, uncertaintyN));
}

/** The reasons of a verdict as one text; the value's uncertainty is named once, with the first. */
export function reasonsText(
  reasons: readonly ReasonView[],
  speech: Speech,
  unit: ForceUnit,
  uncertaintyN?: number | undefined,
): string {
  return reasons.map((reason, i) => reasonSentence(reason, speech, unit, i === 0 ? uncertaintyN : undefined)).join(" ");
}

function figuresOf(reason: ReasonView, speech: Speech, unit: ForceUnit, uncertaintyN: number | undefined): Figures {
  const force = (forceN: number | undefined) => (forceN === undefined ? undefined : speech.force(forceN, unit));
  const share = Math.abs(reason.share ?? 0);
  return {
    value: reason.valueN === undefined ? "?" : speech.forceWithin(reason.valueN, uncertaintyN, unit),
    limit: force(reason.limitN) ?? "?",
    other: force(reason.otherN),
    band: reason.expandedN !== undefined && reason.expandedN > 0 ? force(reason.expandedN) : undefined,
    share: speech.percent(share, share < 0.02 ? 1 : 0),
    below: (reason.share ?? 0) >= 0,
    odds: reason.probability === undefined ? undefined : oddsText(reason.probability, speech),
  };
}

/** "99.9 %": never "100 %", which no measurement gives. */
export function oddsText(probability: number, speech: Speech): string {
  if (probability > 0.999) return `> ${speech.percent(0.999, 1)}`;
  if (probability < 0.001) return `< ${speech.percent(0.001, 1)}`;
  return speech.percent(probability, 1);
}
