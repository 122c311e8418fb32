import type { TrendNote } from "./trendNotes.ts";

/** A note in English words, one sentence without its full stop left out. */
export function noteSentence(note: TrendNote): string {
  switch (note.code) {
    case "noChecks":
      return "No check has been filed yet.";
    case "onlyOneDate":
      return "All checks are of one date: nothing can be said of a trend.";
    case "allEqual":
      return "All values are equal: nothing moves, as far as the gauge's digits show.";
    case "cannotReject":
      return "So few checks can never prove a trend at 5 %, whatever their values.";
    case "tooFew":
      return `${count(note.n, "check")} since the last service or step; a forecast needs ${note.needed}.`;
    case "longGap":
      return `No check from ${day(note.fromMs)} to ${day(note.toMs)}: what the force did meanwhile is not known.`;
    case "limitsChanged":
      return `The limits changed with the check of ${day(note.atMs)}; the forecast uses today's.`;
    case "memoryFound":
      return note.told
        ? `Neighbouring checks resemble one another (lag 1: ${note.lag1.toFixed(2)}); test, band and forecast allow for it.`
        : `Neighbouring checks resemble one another (lag 1: ${note.lag1.toFixed(2)}); under twenty checks a trend cannot be told from that.`;
    case "farAhead":
      return `The ${note.which} lies ${note.spans.toFixed(1)} times the observed span ahead: the line may not hold that long.`;
    case "withoutCounter":
      return `${count(note.n, "check")} without a counter reading cannot be shown on this axis.`;
    case "stray":
      return "One check stands off alone, the next one is back; it is left out of band and steps.";
    case "stepOrSlope":
      return `A step about ${day(note.atMs)} explains the values, but a slope does nearly as well.`;
  }
}

const count = (n: number, word: string) => (n === 1 ? `Only 1 ${word}` : `${n} ${word}s`);

/** A date in UTC; the screens show the works' own. */
const day = (ms: number) => new Date(ms).toISOString().slice(0, 10);
