import type { Reason } from "../verdict/Judgement.ts";
import type { Language } from "./Language.ts";

/** A reason's figures as the reader sees them. */
export type Figures = {
  /** "17.92 ± 0.09 kN". */
  readonly value: string;
  readonly limit: string;
  readonly other: string | undefined;
  /** The guard band at a limit; half the interval at a straddle. */
  readonly band: string | undefined;
  readonly share: string;
  /** Fallen, not risen. */
  readonly below: boolean;
  readonly odds: string | undefined;
};
type Sentence = (figures: Figures) => string;

const askedEn = ({ band, odds }: Figures) =>
  odds === undefined
    ? `the guard band of ${band} that the rule asks for`
    : `what the rule asks for: the odds are ${odds}`;
const askedDe = ({ band, odds }: Figures) =>
  odds === undefined
    ? `das Schutzband von ${band}, das die Regel verlangt`
    : `so viel, wie die Regel verlangt: ${odds} Wahrscheinlichkeit`;

const withinEn = ({ value, limit, other, band, odds }: Figures) => {
  const where = other === undefined ? `on the good side of ${limit}` : `between ${limit} and ${other}`;
  const sure =
    odds !== undefined ? `, with odds of ${odds}` : band !== undefined ? `, guard band of ${band} included` : "";
  return `${value} lies ${where}${sure}.`;
};
const withinDe = ({ value, limit, other, band, odds }: Figures) => {
  const where = other === undefined ? `auf der guten Seite von ${limit}` : `zwischen ${limit} und ${other}`;
  const sure =
    odds !== undefined
      ? `, mit ${odds} Wahrscheinlichkeit`
      : band !== undefined
        ? `, Schutzband von ${band} eingerechnet`
        : "";
  return `${value} liegt ${where}${sure}.`;
};

/** One sentence a code and language; which figures a code has stands with `Reason`. */
export const reasonSentences: Record<Reason["code"], Record<Language, Sentence>> = {
  noValidForce: {
    en: () => "No valid force was measured.",
    de: () => "Es wurde keine gültige Kraft gemessen.",
  },
  noLimits: {
    en: () => "There is neither a limit nor a baseline to compare it with.",
    de: () => "Es gibt weder eine Grenze noch einen Ausgangswert zum Vergleich.",
  },
  belowMinimum: {
    en: ({ value, limit }) => `${value} lies below the minimum of ${limit}.`,
    de: ({ value, limit }) => `${value} liegt unter der Mindestkraft von ${limit}.`,
  },
  aboveMaximum: {
    en: ({ value, limit }) => `${value} lies above the maximum of ${limit}.`,
    de: ({ value, limit }) => `${value} liegt über der Höchstkraft von ${limit}.`,
  },
  guardedAtMinimum: {
    en: (f) => `${f.value} lies above the minimum of ${f.limit}, but not by ${askedEn(f)}.`,
    de: (f) => `${f.value} liegt über der Mindestkraft von ${f.limit}, aber nicht um ${askedDe(f)}.`,
  },
  guardedAtMaximum: {
    en: (f) => `${f.value} lies below the maximum of ${f.limit}, but not by ${askedEn(f)}.`,
    de: (f) => `${f.value} liegt unter der Höchstkraft von ${f.limit}, aber nicht um ${askedDe(f)}.`,
  },
  fellFromBaseline: {
    en: ({ value, other, share }) => `${value} is ${share} below the baseline of ${other}.`,
    de: ({ value, other, share }) => `${value} liegt ${share} unter dem Ausgangswert von ${other}.`,
  },
  fellFromPrevious: {
    en: ({ value, other, share }) => `${value} is ${share} below the check before, ${other}.`,
    de: ({ value, other, share }) => `${value} liegt ${share} unter der vorigen Prüfung, ${other}.`,
  },
  roseFromBaseline: {
    en: ({ value, other, share }) =>
      `${value} is ${share} above the baseline of ${other}. A rise has a cause too: check adapter, unit and zero.`,
    de: ({ value, other, share }) =>
      `${value} liegt ${share} über dem Ausgangswert von ${other}. Auch ein Anstieg hat einen Grund: Adapter, Einheit und Nullpunkt prüfen.`,
  },
  roseFromPrevious: {
    en: ({ value, other, share }) =>
      `${value} is ${share} above the check before, ${other}: check adapter, unit and zero.`,
    de: ({ value, other, share }) =>
      `${value} liegt ${share} über der vorigen Prüfung, ${other}: Adapter, Einheit und Nullpunkt prüfen.`,
  },
  undecidedAtMinimum: {
    en: ({ value, limit }) => `${value} is too near the minimum of ${limit}: on which side it lies cannot be told.`,
    de: ({ value, limit }) =>
      `${value} liegt zu nahe an der Mindestkraft von ${limit}: Auf welcher Seite, ist nicht zu sagen.`,
  },
  undecidedAtMaximum: {
    en: ({ value, limit }) => `${value} is too near the maximum of ${limit}: on which side it lies cannot be told.`,
    de: ({ value, limit }) =>
      `${value} liegt zu nahe an der Höchstkraft von ${limit}: Auf welcher Seite, ist nicht zu sagen.`,
  },
  undecidedBetweenLimits: {
    en: ({ value, limit, other }) =>
      `${value} would meet either limit alone, but not ${limit} and ${other} together with enough certainty.`,
    de: ({ value, limit, other }) =>
      `${value} hielte jede Grenze für sich ein, aber ${limit} und ${other} zusammen nicht sicher genug.`,
  },
  belowWarning: {
    en: ({ value, limit }) => `${value} lies below the warning limit of ${limit}.`,
    de: ({ value, limit }) => `${value} liegt unter der Warngrenze von ${limit}.`,
  },
  withinLimits: {
    en: (f) => withinEn(f),
    de: (f) => withinDe(f),
  },
  aboveWarning: {
    en: ({ value, limit }) => `${value} lies above the warning limit of ${limit}; no minimum is known.`,
    de: ({ value, limit }) => `${value} liegt über der Warngrenze von ${limit}; eine Mindestkraft ist nicht bekannt.`,
  },
  holdsBaseline: {
    en: ({ other, share, below }) => `It holds its baseline: ${share} ${below ? "below" : "above"} ${other}.`,
    de: ({ other, share, below }) => `Sie hält ihren Ausgangswert: ${share} ${below ? "unter" : "über"} ${other}.`,
  },
  holdsPrevious: {
    en: ({ share, below }) => `It lies ${share} ${below ? "below" : "above"} the check before.`,
    de: ({ share, below }) => `Sie liegt ${share} ${below ? "unter" : "über"} der vorigen Prüfung.`,
  },
  straddlesMinimum: {
    en: ({ limit }) => `The uncertainty reaches across the minimum of ${limit}.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Mindestkraft von ${limit} hinweg.`,
  },
  straddlesMaximum: {
    en: ({ limit }) => `The uncertainty reaches across the maximum of ${limit}.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Höchstkraft von ${limit} hinweg.`,
  },
  straddlesWarning: {
    en: ({ limit }) => `The uncertainty reaches across the warning limit of ${limit}.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Warngrenze von ${limit} hinweg.`,
  },
  straddlesCautionFromBaseline: {
    en: ({ limit }) => `The uncertainty reaches across the caution limit of ${limit} from the baseline.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Vorsichtsgrenze von ${limit} zum Ausgangswert hinweg.`,
  },
  straddlesCautionFromPrevious: {
    en: ({ limit }) => `The uncertainty reaches across the caution limit of ${limit} from the check before.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Vorsichtsgrenze von ${limit} zur vorigen Prüfung hinweg.`,
  },
  straddlesActFromBaseline: {
    en: ({ limit }) => `The uncertainty reaches across the act limit of ${limit} from the baseline.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Handlungsgrenze von ${limit} zum Ausgangswert hinweg.`,
  },
  straddlesActFromPrevious: {
    en: ({ limit }) => `The uncertainty reaches across the act limit of ${limit} from the check before.`,
    de: ({ limit }) => `Die Unsicherheit reicht über die Handlungsgrenze von ${limit} zur vorigen Prüfung hinweg.`,
  },
  straddlesRiseFromBaseline: {
    en: ({ limit }) => `The uncertainty reaches across ${limit}, where a rise from the baseline is looked into.`,
    de: ({ limit }) => `Die Unsicherheit reicht über ${limit} hinweg, wo ein Anstieg zum Ausgangswert auffällt.`,
  },
  straddlesRiseFromPrevious: {
    en: ({ limit }) => `The uncertainty reaches across ${limit}, where a rise from the check before is looked into.`,
    de: ({ limit }) => `Die Unsicherheit reicht über ${limit} hinweg, wo ein Anstieg zur vorigen Prüfung auffällt.`,
  },
};
