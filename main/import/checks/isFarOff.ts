import type { Limits } from "../../../app/verdict/Judgement.ts";

/** A worn spindle keeps a third of its force, and none has three times of it; a wrong unit is off by 4.4 and more. */
const FACTOR = 3;

/** Whether a value can hardly be this spindle's: daN taken for kN, pounds for newtons, another machine's row. */
export function isFarOff(valueN: number, { nominalN, minimumN, maximumN }: Limits): boolean {
  const usualN = nominalN ?? minimumN ?? maximumN;
  return usualN !== undefined && (valueN > FACTOR * usualN || valueN < usualN / FACTOR);
}
