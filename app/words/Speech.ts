import { type ForceUnit, forceUnits, fromNewtons } from "../quantity/forceUnits.ts";
import { forceDecimals } from "../quantity/formatForce.ts";
import type { Language } from "./Language.ts";
import { uncertaintyDecimals } from "./uncertaintyDecimals.ts";

/** How numbers, forces and dates are written for the reader. Made once a language; each form is the platform's own (`Intl`). */
export type Speech = {
  readonly language: Language;
  readonly locale: string;
  readonly number: (value: number, decimals?: number) => string;
  /** A fraction as percent: 0.124 -> "12 %". */
  readonly percent: (fraction: number, decimals?: number) => string;
  /** "17.92 kN", decimals by the step of the gauge's last digit. */
  readonly force: (forceN: number, unit: ForceUnit, resolutionN?: number) => string;
  readonly forceFigure: (forceN: number, unit: ForceUnit, resolutionN?: number) => string;
  /** "17.92 ± 0.09 kN", decimals by the uncertainty. */
  readonly forceWithin: (forceN: number, expandedN: number | undefined, unit: ForceUnit) => string;
  readonly date: (ms: number) => string;
  readonly dateTime: (ms: number) => string;
  readonly month: (ms: number) => string;
  /** A plain "2026-11-12" of a calendar. */
  readonly plainDate: (date: string) => string;
  readonly list: (items: readonly string[]) => string;
};

/** A blank that does not break, between figure and unit. */
const GAP = "\u00a0";
export const unitText = (unit: ForceUnit): string =>
  unit === "tonfShort" ? "tonf (2000 lbf)" : unit === "tonfLong" ? "tonf (2240 lbf)" : unit;

/** A unit as the records carry it, a plain text; a stranger's is shown in newtons. */
export function forceUnitOf(unit: string | undefined): ForceUnit {
  return forceUnits.find((known) => known === unit) ?? "N";
}

export function createSpeech(language: Language, locale: string, timeZone?: string): Speech {
  const zone = timeZone === undefined ? {} : { timeZone };
  const dates = new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", year: "numeric", ...zone });
  const times = new Intl.DateTimeFormat(locale, {
    day: "numeric",
    month: "short",
    year: "numeric",
    hour: "2-digit",
    minute: "2-digit",
    ...zone,
  });
  const months = new Intl.DateTimeFormat(locale, { month: "short", year: "numeric", ...zone });
  const plain = new Intl.DateTimeFormat(locale, { day: "numeric", month: "short", year: "numeric", timeZone: "UTC" });
  const lists = new Intl.ListFormat(locale, { type: "conjunction" });
  const fixed = new Map<number, Intl.NumberFormat>();

  const number = (value: number, decimals = 0) => {
    let form = fixed.get(decimals);
    if (form === undefined) {
      // No thousands marks: what is read here can be typed in again, where "17,920" would mean 17.92.
      form = new Intl.NumberFormat(locale, {
        minimumFractionDigits: decimals,
        maximumFractionDigits: decimals,
        useGrouping: false,
        signDisplay: "negative", // never "-0.00"
      });
      fixed.set(decimals, form);
    }
    return form.format(value).replace("-", "\u2212");
  };
  const forceFigure = (forceN: number, unit: ForceUnit, resolutionN = 10) =>
    number(fromNewtons(forceN, unit), forceDecimals(unit, resolutionN));

  return {
    language,
    locale,
    number,
    percent: (fraction, decimals = 0) => `${number(fraction * 100, decimals)}${GAP}%`,
    force: (forceN, unit, resolutionN) => `${forceFigure(forceN, unit, resolutionN)}${GAP}${unitText(unit)}`,
    forceFigure,
    forceWithin: (forceN, expandedN, unit) => {
      if (expandedN === undefined || !(expandedN > 0)) return `${forceFigure(forceN, unit)}${GAP}${unitText(unit)}`;
      const within = fromNewtons(expandedN, unit);
      const decimals = uncertaintyDecimals(within);
      return `${number(fromNewtons(forceN, unit), decimals)}\u00a0±\u00a0${number(within, decimals)}${GAP}${unitText(unit)}`;
    },
    date: (ms) => dates.format(ms),
    dateTime: (ms) => times.format(ms),
    month: (ms) => months.format(ms),
    plainDate: (date) => plain.format(Date.parse(`${date}T00:00:00Z`)),
    list: (items) => lists.format(items),
  };
}
