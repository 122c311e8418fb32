import { type ForceUnit, forceUnits } from "../../../app/quantity/forceUnits.ts";
import { formatForce, formatForceFigure } from "../../../app/quantity/formatForce.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";

/** How reports write figures and codes. */

export const verdictWords: Readonly<Record<Verdict, string>> = {
  good: "GOOD",
  watch: "WATCH",
  act: "ACT",
  stop: "STOP",
  cannotTell: "CANNOT TELL",
};

/** The first of these that is a unit this program knows; newtons otherwise. */
export function unitOf(...named: readonly (string | undefined)[]): ForceUnit {
  return named.find((name): name is ForceUnit => forceUnits.includes(name as ForceUnit)) ?? "N"; // asked for just here
}

export const force = (valueN: number | null | undefined, unit: ForceUnit, stepN?: number): string =>
  valueN === null || valueN === undefined ? "–" : formatForce(valueN, unit, stepN);

export const figure = (valueN: number | null | undefined, unit: ForceUnit, stepN?: number): string =>
  valueN === null || valueN === undefined ? "–" : formatForceFigure(valueN, unit, stepN);

export const percent = (share: number | null | undefined, digits = 1): string =>
  share === null || share === undefined ? "–" : `${(100 * share).toFixed(digits)} %`;

/** Date and time as the clock on the wall stood, with what it was off from UTC. */
export function wallTime(atMs: number, offsetMinutes: number): string {
  const local = new Date(atMs + offsetMinutes * 60_000).toISOString();
  const size = Math.abs(offsetMinutes);
  const two = (n: number) => String(n).padStart(2, "0");
  const offset = `${offsetMinutes < 0 ? "-" : "+"}${two(Math.floor(size / 60))}:${two(size % 60)}`;
  return `${local.slice(0, 10)} ${local.slice(11, 16)} (UTC${offset})`;
}

/** "notReleased" as "not released". */
export const spaced = (code: string): string => code.replace(/([a-z])([A-Z])/g, "$1 $2").toLowerCase();
