import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { commonModes } from "../../../app/trend/commonMode.ts";
import type { History, ServiceKind } from "../../../app/trend/History.ts";
import { hintSentence } from "../../../app/trend/hintSentence.ts";
import { noteSentence } from "../../../app/trend/noteSentence.ts";
import { rankFleet } from "../../../app/trend/rankFleet.ts";
import { seriesTrend } from "../../../app/trend/seriesTrend.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";

const kinds: readonly ServiceKind[] = ["lubricated", "gripper", "springs", "setting", "crash", "other"];
const optional = <T>(arb: fc.Arbitrary<T>) => fc.option(arb, { nil: undefined });
const force = fc.oneof(fc.integer({ min: 1, max: 60_000 }), fc.constantFrom(18_000, 18_010, 18_020));
const day = fc.integer({ min: 0, max: 1500 }).map((d) => Date.UTC(2031, 0, 1) + d * 86_400_000);

const history: fc.Arbitrary<History> = fc
  .record({
    points: fc.array(
      fc.record({
        atMs: day,
        valueN: force,
        counter: optional(fc.integer({ min: 0, max: 500_000 })),
        standardUncertaintyN: optional(fc.integer({ min: 1, max: 500 })),
        commonUncertaintyN: optional(fc.integer({ min: 0, max: 300 })),
        seriesSN: optional(fc.integer({ min: 0, max: 900 })),
        seriesCount: optional(fc.integer({ min: 1, max: 8 })),
        creep: optional(fc.double({ min: -0.02, max: 0.02, noNaN: true })),
        notReleased: optional(fc.boolean()),
        gaugeId: optional(fc.constantFrom("gauge-1", "gauge-2")),
        adapterId: optional(fc.constantFrom("adapter-1", "adapter-2")),
        verdict: fc.constantFrom("good" as const, "watch" as const),
      }),
      { maxLength: 30 },
    ),
    events: fc.array(fc.record({ atMs: day, kind: fc.constantFrom(...kinds), newBaseline: fc.boolean() }), {
      maxLength: 4,
    }),
    limits: fc.record({ minimumN: optional(force), warningN: optional(force), nominalN: optional(force) }),
  })
  .map(({ points, ...rest }) => ({
    spindleId: "spindle-1",
    points: points.map((point, i) => ({ ...point, checkId: `check-${i}` })),
    ...rest,
  }));

/** Paths of numbers that are not finite, anywhere inside. */
function notFinite(value: unknown, path = ""): string[] {
  if (typeof value === "number") return Number.isFinite(value) ? [] : [path];
  if (typeof value !== "object" || value === null) return [];
  return Object.entries(value).flatMap(([key, inner]) => notFinite(inner, `${path}.${key}`));
}

describe("any history", () => {
  it("has a trend whose every number is finite, on both axes, and words without holes", () => {
    fc.assert(
      fc.property(history, fc.constantFrom("date" as const, "counter" as const), (one, xAxis) => {
        const trend = trendOf(one, { xAxis });
        expect(notFinite(trend)).toEqual([]);
        for (const words of [...trend.hints.map(hintSentence), ...trend.notes.map(noteSentence)]) {
          expect(words).not.toMatch(/NaN|undefined|Infinity/);
        }
        expect(trend.segments.reduce((sum, s) => sum + s.n, 0)).toBe(trend.points.length);
        for (const { low, at, high } of trend.forecasts) {
          if (at !== undefined) expect(low! <= at && at <= high!).toBe(true);
        }
      }),
      { numRuns: 300 },
    );
  });

  it("can be ranked and compared with any other", () => {
    fc.assert(
      fc.property(fc.array(history, { maxLength: 9 }), (many) => {
        const named = many.map((h, i) => ({ ...h, spindleId: `spindle-${i}` }));
        const moves = commonModes(named);
        expect(notFinite(moves)).toEqual([]);
        const places = rankFleet(
          named.map((h) => ({
            spindleId: h.spindleId,
            trend: trendOf(h, { sharedMoves: moves }),
            minimumN: h.limits.minimumN,
            verdict: h.points.at(-1)?.verdict,
            stopped: false,
            nextRoundMs: Date.UTC(2036, 0, 1),
          })),
        );
        expect(notFinite(places)).toEqual([]);
        expect(places.map((p) => p.rank)).toEqual(named.map((_, i) => i + 1));
      }),
      { numRuns: 60 },
    );
  });

  it("has charts and tests whose every number is finite", () => {
    const value = fc.oneof(fc.integer({ min: -50, max: 50 }), fc.double({ min: -1e6, max: 1e6, noNaN: true }));
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 400 }), value), { minLength: 1, maxLength: 40 }),
        (rows) => {
          rows.sort((a, b) => a[0] - b[0]);
          const found = seriesTrend(
            Float64Array.from(rows, (r) => r[0]),
            Float64Array.from(rows, (r) => r[1]),
            {
              starts: [Math.floor(rows.length / 2)],
              limits: [0, -20],
              horizon: 4000,
              lambda: 0.2,
              k: 0.5,
              h: 5,
              target: undefined,
              sigma: undefined,
              chartLimits: "startup",
              rules: ["beyondThree", "sixRising"],
            },
          );
          expect(notFinite(found)).toEqual([]);
        },
      ),
      { numRuns: 200 },
    );
  });
});
