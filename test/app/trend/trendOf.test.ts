import { describe, expect, it } from "vitest";
import { courseOf } from "../../../app/trend/courseOf.ts";
import { noteSentence } from "../../../app/trend/noteSentence.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";
import { DAY_MS, FIRST_MS, rippled, spindleHistory } from "../../support/spindleHistory.ts";

const limits = { minimumN: 17_000, warningN: 18_000 };
const falling = rippled(12, 100, (i) => 20_000 - 120 * i);
const codes = (trend: ReturnType<typeof trendOf>) => trend.notes.map((note) => note.code);

describe("trendOf", () => {
  it("forecasts warning and minimum as dates", () => {
    const { forecasts, axis } = trendOf(spindleHistory(falling, { limits }));
    expect(axis).toEqual({ kind: "date", originMs: FIRST_MS });
    expect(forecasts.map((f) => [f.which, f.state])).toEqual([
      ["warning", "crosses"],
      ["minimum", "crosses"],
    ]);
    const [warning, minimum] = forecasts;
    expect(minimum!.atMs).toBe(Math.round(FIRST_MS + minimum!.at! * DAY_MS));
    expect(warning!.atMs!).toBeLessThan(minimum!.atMs!);
  });

  it("begins a new segment at a service and forecasts from it alone", () => {
    const values = [...falling, ...rippled(8, 50, (i) => 20_500 - 10 * i)];
    const service = { atMs: FIRST_MS + 12 * 90 * DAY_MS - DAY_MS, kind: "springs" as const, newBaseline: true };
    const trend = trendOf(spindleHistory(values, { limits, events: [service] }));
    expect(trend.segments.map((s) => [s.from, s.to, s.startedBy])).toEqual([
      [0, 12, "first"],
      [12, 20, "service"],
    ]);
    expect(trend.forecasts.map((f) => f.state)).not.toContain("already");
    expect(trend.whole!.n).toBe(20);
    expect(trend.services).toMatchObject([{ kind: "springs", judged: "rose" }]);
    expect(trend.points[12]).toMatchObject({ segment: 1, x: 1080 });
  });

  it.each(["crash", "other"] as const)("does not cut at %s, unless it set a new baseline", (kind) => {
    const mark = { atMs: FIRST_MS + 400 * DAY_MS, kind };
    expect(trendOf(spindleHistory(falling, { events: [{ ...mark, newBaseline: false }] })).segments).toHaveLength(1);
    expect(trendOf(spindleHistory(falling, { events: [{ ...mark, newBaseline: true }] })).segments).toHaveLength(2);
  });

  it("takes a check of the service's own day as after it, unless it was made before it", () => {
    const dayStart = FIRST_MS + 450 * DAY_MS - DAY_MS / 2;
    const events = [{ atMs: dayStart, kind: "lubricated" as const, newBaseline: true }];
    expect(trendOf(spindleHistory(falling, { events })).segments[1]!.from).toBe(5);
    const before = (i: number) => (i === 5 ? { reason: "beforeService" } : {});
    expect(trendOf(spindleHistory(falling, { events, check: before })).segments[1]!.from).toBe(6);
  });

  it("does not know a voided check any more: the trend is that of the others", () => {
    const history = spindleHistory(falling, { limits });
    const without = { ...history, points: history.points.filter((_, i) => i !== 7) };
    const again = spindleHistory(falling, { limits }).points.filter((p) => p.checkId !== "spindle-1-check-8");
    expect(trendOf(without)).toEqual(trendOf({ ...without, points: again.reverse() }));
    expect(trendOf(without).points).toHaveLength(11);
  });

  it("runs on tool changes too, leaves out checks without a counter, and gives dates by the mean pace", () => {
    const check = (i: number) => ({ counter: i === 3 ? undefined : 1000 + 5000 * i });
    const trend = trendOf(spindleHistory(falling, { limits, check }), { xAxis: "counter" });
    expect(trend.axis).toEqual({ kind: "counter", perDay: 5000 / 90, restarts: [] });
    expect(trend.points).toHaveLength(11);
    expect(codes(trend)).toContain("withoutCounter");
    const byDate = trendOf(spindleHistory(falling, { limits }));
    const [, byCount] = trend.forecasts;
    expect(Math.abs(byCount!.atMs! - byDate.forecasts[1]!.atMs!)).toBeLessThan(60 * DAY_MS);
    expect(byCount!.at!).toBeGreaterThan(60_000);
  });

  it("counts on where the counter began anew with an exchanged control", () => {
    const of = (counter: (i: number) => number) =>
      trendOf(spindleHistory(falling, { limits, check: (i) => ({ counter: counter(i) }) }), { xAxis: "counter" });
    const whole = of((i) => 1000 + 5000 * i);
    const anew = of((i) => (i < 6 ? 1000 + 5000 * i : 5000 * (i - 5)));
    expect(anew.points.map((p) => p.checkId)).toEqual(whole.points.map((p) => p.checkId));
    expect(anew.points.map((p) => p.x)).toEqual(whole.points.map((p) => p.x));
    expect(anew.forecasts).toEqual(whole.forecasts);
    // The check at the exchange itself is the last one so far.
    const last = trendOf(
      spindleHistory(falling.slice(0, 7), { limits, check: (i) => ({ counter: i < 6 ? 1000 + 5000 * i : 400 }) }),
      { xAxis: "counter" },
    );
    expect(last.points.at(-1)).toMatchObject({ checkId: "spindle-1-check-7", x: 26_400 });
  });

  it("does not take one counter written too low for a new beginning", () => {
    const check = (i: number) => ({ counter: i === 4 ? 2100 : 1000 + 5000 * i });
    const trend = trendOf(spindleHistory(falling, { limits, check }), { xAxis: "counter" });
    expect(trend.points.at(-1)).toMatchObject({ checkId: "spindle-1-check-12", x: 56_000 });
  });

  it("carries the uncertainty that checks share into band and forecast", () => {
    const band = (check: () => object) => {
      const segment = trendOf(spindleHistory(falling, { limits, check })).segments[0]!;
      return segment.band[4]!.high! - segment.band[4]!.low!;
    };
    const plain = band(() => ({}));
    const filed = band(() => ({ standardUncertaintyN: 220, commonUncertaintyN: 200 }));
    const half = Math.sqrt((plain / 2) ** 2 + (1.6448536269514722 * 200) ** 2);
    expect(filed / 2).toBeCloseTo(half, 6);
    // Without the split, what the stated uncertainty has beyond the scatter seen is taken as shared.
    expect(band(() => ({ standardUncertaintyN: 20 }))).toBeCloseTo(plain, 9);
    expect(band(() => ({ standardUncertaintyN: 500 }))).toBeGreaterThan(plain);
  });

  it("alarms when checks leave the level of the first eight", () => {
    const values = rippled(11, 50, (i) => (i < 9 ? 18_000 : 17_400));
    expect(trendOf(spindleHistory(values)).alarm).toMatchObject({
      direction: "down",
      sinceCheckId: "spindle-1-check-10",
    });
    expect(trendOf(spindleHistory(rippled(25, 50, () => 18_000))).alarm).toBeUndefined();
  });

  it("names the step between checks, its share, and what was changed with it", () => {
    const values = rippled(20, 40, (i) => (i < 11 ? 20_000 : 19_000));
    const check = (i: number) => ({ gaugeId: i < 11 ? "gauge-1" : "gauge-2" });
    const { steps, points } = trendOf(spindleHistory(values, { check }));
    expect(steps).toMatchObject([
      { lastBefore: "spindle-1-check-11", firstAfter: "spindle-1-check-12", gaugeChanged: true, adapterChanged: false },
    ]);
    expect(steps[0]!.share).toBeCloseTo(-0.05, 2);
    expect(points[11]!.gaugeChanged).toBe(true);
  });

  it("is the course with more beside it", () => {
    const history = spindleHistory(falling, { limits });
    const [course, trend] = [courseOf(history), trendOf(history)];
    expect(trend.forecasts).toEqual(course.forecasts);
    expect(trend.segments.at(-1)).toMatchObject({ ...course.segments[0] });
  });

  it("leaves the history as it was and answers the same again", () => {
    const history = spindleHistory(falling, { limits });
    const frozen = { ...history, points: Object.freeze([...history.points].reverse()) };
    expect(trendOf(frozen)).toEqual(trendOf(history));
  });
});

describe("notes of a trend", () => {
  const noted = (values: readonly number[], more: Parameters<typeof spindleHistory>[1] = {}) =>
    codes(trendOf(spindleHistory(values, more)));

  it("answers clearly where there is little to say", () => {
    expect(noted([])).toEqual(["noChecks"]);
    expect(noted([5000])).toEqual(["tooFew"]);
    expect(noted([5000, 4900])).toEqual(["tooFew"]);
    expect(noted([5, 5, 5, 5, 5])).toEqual(["allEqual"]);
    expect(noted([5, 6, 5, 6, 7], { everyDays: 0 })).toEqual(["onlyOneDate"]);
    expect(noted([8, 7, 6, 5])).toEqual(["cannotReject"]);
  });

  it("names a gap of years, changed limits, a stray, and a forecast far ahead", () => {
    expect(noted([9, 8, 9, 8, 9], { everyDays: 800 })).toContain("longGap");
    const check = (i: number) => ({ limits: { minimumN: i < 4 ? 15_000 : 16_000 } });
    expect(noted(falling, { check })).toContain("limitsChanged");
    expect(noted(rippled(12, 40, (i) => (i === 5 ? 12_000 : 18_000)))).toContain("stray");
    expect(noted(falling, { limits: { minimumN: 14_000 } })).toContain("farAhead");
  });

  it("has a sentence for each", () => {
    const all = [
      { code: "noChecks" },
      { code: "onlyOneDate" },
      { code: "allEqual" },
      { code: "cannotReject" },
      { code: "tooFew", n: 2, needed: 4 },
      { code: "longGap", fromMs: 0, toMs: 1e11 },
      { code: "limitsChanged", atMs: 0 },
      { code: "memoryFound", lag1: 0.4, told: true },
      { code: "memoryFound", lag1: 0.4, told: false },
      { code: "farAhead", which: "minimum", spans: 4.2 },
      { code: "withoutCounter", n: 3 },
      { code: "stray", checkId: "c" },
      { code: "stepOrSlope", atMs: 0 },
    ] as const;
    const sentences = all.map(noteSentence);
    expect(new Set(sentences).size).toBe(all.length);
    for (const sentence of sentences) expect(sentence).toMatch(/^[A-Z0-9].*\.$/);
    expect(noteSentence({ code: "longGap", fromMs: 0, toMs: 1e11 })).toContain("1970-01-01 to 1973-03-03");
  });
});
