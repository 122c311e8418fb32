import type { CheckPoint, History } from "./History.ts";
import type { Trend } from "./trendOf.ts";

/** What a reader of a trend has to know beside its numbers, as data; `noteSentence` has the English words. */
export type TrendNote =
  | { readonly code: "noChecks" | "onlyOneDate" | "allEqual" | "cannotReject" }
  | { readonly code: "tooFew"; readonly n: number; readonly needed: number }
  | { readonly code: "longGap"; readonly fromMs: number; readonly toMs: number }
  | { readonly code: "limitsChanged"; readonly atMs: number }
  | { readonly code: "memoryFound"; readonly lag1: number; readonly told: boolean }
  | { readonly code: "farAhead"; readonly which: "warning" | "minimum"; readonly spans: number }
  | { readonly code: "withoutCounter"; readonly n: number }
  | { readonly code: "stray"; readonly checkId: string }
  | { readonly code: "stepOrSlope"; readonly atMs: number };

const YEAR_MS = 365.25 * 86_400_000;

/** Notes on the last segment and on the history as a whole, the gravest first. */
export function trendNotes(
  history: History,
  checks: readonly CheckPoint[],
  trend: Omit<Trend, "hints" | "notes">,
): TrendNote[] {
  const last = trend.segments.at(-1);
  if (last === undefined) {
    const without = history.points.length;
    return without > 0 ? [{ code: "withoutCounter", n: without }] : [{ code: "noChecks" }];
  }
  const notes: TrendNote[] = [];
  if (last.n < 4) notes.push({ code: "tooFew", n: last.n, needed: 4 });
  else if (last.line === undefined) notes.push({ code: "onlyOneDate" });
  else if (last.mannKendall.varS === 0) notes.push({ code: "allEqual" });
  else if ((last.mannKendall.leastP ?? 0) > 0.05) notes.push({ code: "cannotReject" });
  if (last.memory.found) notes.push({ code: "memoryFound", lag1: last.memory.lag1, told: last.memory.p !== undefined });
  for (const { which, state, at, beyondThreeSpans } of trend.forecasts) {
    if (!beyondThreeSpans || at === undefined || state === "already") continue;
    notes.push({ code: "farAhead", which, spans: (at - last.lastX) / (last.lastX - last.firstX) });
  }
  for (const step of trend.steps) if (!step.clear) notes.push({ code: "stepOrSlope", atMs: step.atMs });
  for (const point of trend.points) if (point.stray) notes.push({ code: "stray", checkId: point.checkId });
  if (checks.length < history.points.length) {
    notes.push({ code: "withoutCounter", n: history.points.length - checks.length });
  }
  return [...notes, ...gaps(checks), ...limitChanges(checks)];
}

/** Years without a check: nobody knows what the force did meanwhile. */
function gaps(checks: readonly CheckPoint[]): TrendNote[] {
  return checks.flatMap((check, i) => {
    const before = checks[i - 1];
    const long = before !== undefined && Math.abs(check.atMs - before.atMs) > 2 * YEAR_MS;
    return long ? [{ code: "longGap" as const, fromMs: before.atMs, toMs: check.atMs }] : [];
  });
}

function limitChanges(checks: readonly CheckPoint[]): TrendNote[] {
  return checks.flatMap((check, i) => {
    const before = checks[i - 1]?.limits;
    const now = check.limits;
    if (before === undefined || now === undefined) return [];
    const same = before.minimumN === now.minimumN && before.warningN === now.warningN;
    return same ? [] : [{ code: "limitsChanged" as const, atMs: check.atMs }];
  });
}
