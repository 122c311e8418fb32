import type { ForceUnit } from "../quantity/forceUnits.ts";
import type { Settling } from "../verdict/whatSettles.ts";
import { inBoth } from "./inBoth.ts";
import type { Speech } from "./Speech.ts";

export const settlingTexts = inBoth({
  scatterUnknown: [
    "Clamp twice more: a single clamping does not show its scatter.",
    "Noch zweimal spannen: Ein einzelner Spannvorgang zeigt seine Streuung nicht.",
  ],
  oneMore: [
    "One more clamping would settle it if mean and scatter stay as they are.",
    "Ein weiterer Spannvorgang würde es entscheiden, wenn Mittel und Streuung so bleiben.",
  ],
  more: [
    (n: number) => `${n} more clampings would settle it if mean and scatter stay as they are.`,
    (n: number) => `${n} weitere Spannvorgänge würden es entscheiden, wenn Mittel und Streuung so bleiben.`,
  ],
  never: [
    "The value lies on the limit itself: no measurement, however good, can settle it.",
    "Der Wert liegt auf der Grenze selbst: Keine noch so gute Messung kann es entscheiden.",
  ],
  needed: [
    (u: string) => `It would be settled with a standard uncertainty of ${u} or less.`,
    (u: string) => `Mit einer Standardunsicherheit von höchstens ${u} wäre es entschieden.`,
  ],
  repeatability: ["Clamp more often.", "Öfter spannen."],
  holdNoise: ["Hold longer.", "Länger halten."],
  resolution: ["A gauge with a finer step would help most.", "Ein Messgerät mit feinerer Stufe hülfe am meisten."],
  zero: ["A steadier zero would help most.", "Ein ruhigerer Nullpunkt hülfe am meisten."],
  gaugeProof: ["A better proof of the gauge would help most.", "Eine bessere Prüfung des Messgeräts hülfe am meisten."],
  adapter: [
    "Another adapter, or a calibration of this one, would help most.",
    "Ein anderer Adapter oder eine Kalibrierung dieses hülfe am meisten.",
  ],
  temperature: [
    "Measuring nearer to the temperature of the proof would help most.",
    "Näher an der Temperatur der Prüfung zu messen hülfe am meisten.",
  ],
  drift: ["A new proof of the gauge would help most.", "Eine neue Prüfung des Messgeräts hülfe am meisten."],
  misalignment: ["A straighter seat would help most.", "Ein geraderer Sitz hülfe am meisten."],
  stop: [
    "Do not use the spindle until someone entitled has decided; the builder's manual and local rules come first.",
    "Die Spindel nicht benutzen, bis jemand Befugtes entschieden hat; Handbuch des Herstellers und örtliche Regeln gehen vor.",
  ],
  cannotTell: [
    "Not shown to be good: until it is decided, treat the spindle as the builder's manual and local rules ask.",
    "Nicht als gut erwiesen: Bis es entschieden ist, die Spindel so behandeln, wie Handbuch und örtliche Regeln es verlangen.",
  ],
});

/** What would settle an open verdict. */
export function settlingWords(settling: Settling, speech: Speech, unit: ForceUnit): string {
  const words = settlingTexts[speech.language];
  const { moreClampings, scatterUnknown, neededStandardN, improve } = settling;
  if (scatterUnknown) return words.scatterUnknown;
  if (moreClampings !== undefined && moreClampings !== null)
    return moreClampings === 1 ? words.oneMore : words.more(moreClampings);
  if (neededStandardN === undefined || neededStandardN === null) return words.never;
  return [words.needed(speech.force(neededStandardN, unit)), improve && words[improve]].filter(Boolean).join(" ");
}
