import type {
  CheckPage,
  CheckRow,
  FleetView,
  SpindlePage,
  SpindleRow,
  WaveformView,
} from "../../../app/contract/recordViews.ts";
import type { ServiceEvent, Spindle } from "../../../app/ledger/register.ts";

import { compareLike } from "../../../app/trend/compareLike.ts";
import { likeEntryOf } from "../../../app/trend/likeEntryOf.ts";
import { rankFleet } from "../../../app/trend/rankFleet.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";

import { fakeDue } from "./fakeDue.ts";
import { FAKE_TODAY_MS } from "./fakeHistory.ts";

/** Pages of the fake core that hold more than rows. */
export function fakeTrend(
  row: SpindleRow,
  checks: readonly CheckRow[],
  events: readonly ServiceEvent[],
  xAxis: "date" | "counter" = "date",
): SpindlePage["trend"] {
  return trendOf(
    {
      spindleId: row.spindle.spindleId,
      points: checks
        .filter((check) => check.voided === undefined)
        .map((check, i) => ({
          ...fakeDetail(check, i),
          seriesSN: fakeDetail(check, i).scatterN,
          seriesCount: check.n,
          checkId: check.checkId,
          atMs: check.measuredAtMs,
          valueN: check.valueN ?? 0,
          standardUncertaintyN: check.standardUncertaintyN,
          gaugeId: check.gaugeId,
          adapterId: check.adapterId,
          verdict: check.verdict,
          reason: "routine",
          limits: row.spindle.limits,
        })),
      events: events.map((event) => ({ ...event, atMs: Date.parse(event.at) })),
      limits: row.spindle.limits,
    },
    { xAxis },
  );
}

/** What only the whole check would tell: 900 tool changes from check to check, and a scatter that goes up and down. */
export function fakeDetail({ checkId, valueN }: CheckRow, i: number): SpindlePage["details"][number] {
  return { checkId, counter: 12_000 + 900 * i, scatterN: (valueN ?? 0) * (0.003 + 0.001 * (i % 3)) };
}

export function fakeFleet(rows: readonly SpindleRow[], checks: readonly CheckRow[]): FleetView {
  const entries = rows.map((row) => ({
    spindleId: row.spindle.spindleId,
    trend: fakeTrend(
      row,
      checks.filter((check) => check.spindleId === row.spindle.spindleId),
      [],
    ),
    minimumN: row.spindle.limits.minimumN,
    verdict: row.verdict,
    stopped: row.stopped,
    nextRoundMs: FAKE_TODAY_MS + 90 * 86_400_000,
  }));
  const alike = rows.flatMap(({ spindle }, i) => {
    const { spindleId, taper, limits } = spindle;
    return likeEntryOf({ spindleId, taper, nominalN: limits.nominalN }, entries[i]!.trend) ?? [];
  });
  const today = new Date(FAKE_TODAY_MS).toISOString().slice(0, 10);
  const due = rows.map((row) => fakeDue(row, today));
  return { rows: rankFleet(entries), commonMode: [], like: compareLike(alike), due };
}

export function fakeWaveform(cycleId: string, valueN: number): WaveformView {
  const t = Array.from({ length: 500 }, (_, i) => i / 100);
  const forceN = t.map((s) =>
    s < 0.3 ? 0 : s > 4.5 ? 0 : valueN * (1 - Math.exp(-(s - 0.3) / 0.03) * Math.cos((s - 0.3) * 38)),
  );
  return { cycleId, timed: true, t, forceN };
}

export function fakeCheckPage(row: CheckRow, spindle: Spindle): CheckPage {
  const valueN = row.valueN ?? 0;
  const cycles = Array.from({ length: row.n }, (_, i) => ({
    cycleId: row.checkId.slice(0, -4) + String(9000 + i),
    startIndex: 100 * i,
    endIndex: 100 * i + 90,
    startS: 6 * i,
    endS: 6 * i + 4,
    peakN: valueN * 1.08,
    peakIndex: 100 * i + 2,
    settledN: valueN + (i - 1) * 12,
    settledUncertaintyN: 8,
    settledWindow: { fromIndex: 10, toIndex: 60, n: 50, effectiveN: 40 },
    overshoot: 0.08,
    riseTimeS: 0.04,
    noiseN: 18,
    slopeNPerS: -1,
    creep: 0.0004,
    zeroBeforeN: 10,
    zeroAfterN: 12,
    zeroN: 11,
    flags: [],
    dropped: null,
    waveformHash: null,
  }));
  const standardN = row.standardUncertaintyN ?? 45;
  return {
    check: {
      checkId: row.checkId,
      spindleId: row.spindleId,
      adapterId: row.adapterId ?? null,
      gaugeId: row.gaugeId ?? null,
      operatorId: row.operatorId ?? null,
      measuredAt: new Date(row.measuredAtMs).toISOString(),
      offsetMinutes: 60,
      source: "measured",
      reason: "routine",
      spindleWarm: true,
      temperatureC: 22.5,
      counter: 41_200,
      note: null,
      unit: "kN",
      rawLine: null,
      rateHz: 100,
      patternId: null,
      pattern: null,
      cycles,
      series: { n: row.n, basis: "settled", meanN: valueN, sN: 12, rangeN: 24, outliers: [] },
      corrections: { curve: null, adapterScale: 1.002, adapterVersion: 1 },
      valueN,
      budget: {
        contributions: [
          {
            source: "adapter",
            type: "B",
            distribution: "normal",
            standardN: standardN * 0.8,
            degreesOfFreedom: 50,
            assumed: false,
          },
          {
            source: "repeatability",
            type: "A",
            distribution: "t",
            standardN: standardN * 0.52,
            degreesOfFreedom: 2,
            assumed: false,
          },
          {
            source: "misalignment",
            type: "B",
            distribution: "rectangular",
            standardN: standardN * 0.3,
            degreesOfFreedom: null,
            assumed: true,
          },
        ],
        standardN,
        degreesOfFreedom: 14,
        coverageFactor: 2,
        coverage: 0.95,
        expandedN: standardN * 2,
        dominant: "adapter",
      },
      limits: spindle.limits,
      rule: { rule: "guarded" },
      cautionDrop: 0.1,
      actDrop: 0.2,
      baseline: null,
      previous: null,
      verdict: row.verdict,
      conformity: "conforming",
      zone: null,
      probabilityConforming: 0.99,
      dropFromBaseline: row.dropFromBaseline ?? null,
      dropFromPrevious: row.dropFromPrevious ?? null,
      reasons: [{ code: "withinLimits", valueN, limitN: spindle.limits.minimumN ?? 0 }],
      weakenedBy: [{ code: "gaugeChanged" }],
      warnings: [],
      gapsS: [],
      programVersion: "0.1.0",
      clockDoubtful: false,
      roundId: null,
      workOrder: null,
    },
    row,
    hasWaveform: cycles.map((cycle) => cycle.cycleId),
    origin: "6f2d1c1e-0000-4000-8000-000000000000",
    seq: 812,
    hash: "9c".repeat(32),
    today: undefined,
  };
}
