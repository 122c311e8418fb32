import type { CheckRow, SpindleRow } from "../../../app/contract/recordViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";
import { idsFrom } from "./fakeId.ts";
import { fakeAdapters, fakeGauges, fakeOperators, type History } from "./fakeRegister.ts";

const DAY_MS = 86_400_000;
export const FAKE_TODAY_MS = Date.UTC(2026, 10, 16, 9, 0);
const newId = idsFrom(10_000);

/** A small generator of even numbers: the same history every time. */
function evenNumbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1_664_525) + 1_013_904_223) >>> 0;
    return state / 2 ** 32;
  };
}

/** The share of nominal at a point of the history, `at` from 0 (three years ago) to 1 (now). */
const share: Record<Exclude<History, "none">, (at: number) => number> = {
  level: () => 1.006,
  tiring: (at) => 1.015 - 0.13 * at,
  broken: (at) => (at > 0.9 ? 0.81 : 1.01),
  dry: (at) => 1 - 0.11 * at ** 2,
  serviced: (at) => (at > 0.75 ? 0.995 : 1.01 - 0.08 * at),
  low: (at) => 1.02 - 0.2 * at,
  straddling: (at) => 1.02 - 0.215 * at,
};

export function fakeChecks(spindle: Spindle, history: History, seed: number): CheckRow[] {
  if (history === "none") return [];
  const random = evenNumbers(seed);
  const nominalN = spindle.limits.nominalN!;
  const scatter = history === "dry" || history === "straddling" ? 0.012 : 0.004;
  const rows: CheckRow[] = [];
  for (let i = 0; i < 16; i += 1) {
    const at = i / 15;
    const valueN = nominalN * (share[history](at) + (random() + random() - 1) * scatter);
    const expandedN = nominalN * (history === "straddling" ? 0.09 : 0.006 + scatter * 2);
    const baselineN = rows[0]?.valueN;
    const previousN = rows.at(-1)?.valueN;
    rows.push({
      checkId: newId(),
      spindleId: spindle.spindleId,
      measuredAtMs: FAKE_TODAY_MS - DAY_MS * (4 + Math.round((1 - at) * 1_060 + random() * 9)),
      valueN,
      expandedN,
      standardUncertaintyN: expandedN / 2,
      verdict: fakeVerdict(spindle, valueN, expandedN, baselineN),
      basis: "settled",
      source: "measured",
      n: 3,
      dropFromBaseline: baselineN === undefined ? undefined : 1 - valueN / baselineN,
      dropFromPrevious: previousN === undefined ? undefined : 1 - valueN / previousN,
      gaugeId: fakeGauges[i % 5 === 4 ? 1 : 0]!.gauge.gaugeId,
      adapterId: fakeAdapters.find((a) => a.adapter.taper === spindle.taper)?.adapter.adapterId,
      operatorId: fakeOperators[i % 2]!.operatorId,
      isBaseline: i === 0,
      voided: undefined,
    });
  }
  return rows;
}

export function fakeVerdict(
  spindle: Spindle,
  valueN: number,
  expandedN: number,
  baselineN: number | undefined,
): Verdict {
  const { minimumN, warningN, maximumN } = spindle.limits;
  if (minimumN !== undefined && valueN + expandedN < minimumN) return "stop";
  if (baselineN !== undefined && valueN < baselineN * 0.8) return "act";
  if (maximumN !== undefined && valueN > maximumN) return "act";
  if (minimumN !== undefined && valueN - expandedN < minimumN) return "cannotTell";
  if (warningN !== undefined && valueN < warningN) return "watch";
  if (baselineN !== undefined && valueN < baselineN * 0.9) return "watch";
  return minimumN === undefined && baselineN === undefined ? "cannotTell" : "good";
}

export function fakeRow(spindle: Spindle, checks: readonly CheckRow[]): SpindleRow {
  const counting = checks.filter((check) => check.voided === undefined);
  const last = counting.at(-1);
  const baselineN = counting.find((check) => check.isBaseline)?.valueN;
  return {
    spindle,
    verdict: last?.verdict,
    stopped: last?.verdict === "stop",
    last,
    checkCount: counting.length,
    baselineN,
    spark: baselineN === undefined ? [] : counting.slice(-24).map((check) => (check.valueN ?? 0) / baselineN),
  };
}
