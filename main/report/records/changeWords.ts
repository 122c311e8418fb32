import { reportTexts } from "./reportTexts.ts";
import type { Writing } from "./Writing.ts";

/** A fall or a rise in words. @param drop  as a fraction, down is positive; undefined where there is nothing to compare with */
export function changeWords(drop: number | null | undefined, write: Writing): string | undefined {
  if (drop === null || drop === undefined) return undefined;
  const words = reportTexts[write.language];
  return drop >= 0 ? words.fallen(write.percent(drop)) : words.risen(write.percent(-drop));
}
