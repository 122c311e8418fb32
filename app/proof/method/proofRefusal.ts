import type { ProofRefused } from "./ProofOptions.ts";

/** One English sentence each, without its capital and stop; `#1`, `#2` are the figures it speaks of. */
const sentences = {
  degreeRange: "a curve has a degree from 1 to 12, got #1",
  tooFewLoads: "degree #1 needs at least #2 different loads, the readings have #3: take more loads or a lower degree",
  noReadingOver: "degree #1 has #2 coefficients and there are #3 readings: none is left over to judge the curve by",
  iso376Degree: "ISO 376 knows curves of degree 1, 2 and 3, got #1",
  noLoad: "a working check needs at least one reading under a load above zero",
  twoLoads: "a gauge's curve needs at least two different loads",
  notRising: "the indication does not rise with the force everywhere: no curve can be read back from it",
  notAboveZero: "the indication is not above zero under the greatest load",
  factorNotAboveZero: "every load and net indication of an adapter's proof must be above zero",
  factorRuns: "an adapter's factor needs at least two runs, got #1: its scatter from seat to seat would be unknown",
  nothingRead: "nothing has been read under a load yet",
  noCurve: "the readings carry no curve",
  withAdapter:
    "the gauge was proved with an adapter: the curve is that of both, and the adapter has a scale of its own",
} as const;

export type ProofRefusalCode = keyof typeof sentences;

/** Why a proof came to nothing, for a screen or a report to put into its reader's language. */
export type ProofRefusal = { readonly code: ProofRefusalCode; readonly figures: readonly number[] };

/** A refusal with its English sentence and, beside it, code and figures in the order the sentence counts them. */
export function refuse(code: ProofRefusalCode, ...figures: readonly number[]): ProofRefused {
  const refused = figures.reduce<string>(
    (said, figure, i) => said.replace(`#${i + 1}`, String(figure)),
    sentences[code],
  );
  return { refused, why: { code, figures } };
}
