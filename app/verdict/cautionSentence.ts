import type { Verdict } from "./Judgement.ts";

/** What must be said beside a verdict where acting on it can hurt someone; undefined where nothing must. */
export function cautionSentence(verdict: Verdict): string | undefined {
  if (verdict === "stop") {
    return "Do not use the spindle until someone entitled has decided; the builder's manual and local rules come first.";
  }
  if (verdict === "cannotTell") {
    return "Not shown to be good: until it is decided, treat the spindle as the builder's manual and local rules ask.";
  }
  return undefined;
}
