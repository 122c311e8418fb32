import { describe, expect, it } from "vitest";
import { serviceEffects } from "../../../app/trend/serviceEffects.ts";
import { DAY_MS, FIRST_MS, rippled, spindleHistory } from "../../support/spindleHistory.ts";

const service = (afterCheck: number, kind: "lubricated" | "springs" = "lubricated") => ({
  eventId: `event-${afterCheck}`,
  atMs: FIRST_MS + (afterCheck * 90 - 10) * DAY_MS,
  kind,
  newBaseline: true,
});

describe("serviceEffects", () => {
  // Three against three, by hand: Student's interval with 4 degrees of freedom, t = 2.776 (JCGM 100 table G.2).
  it("compares up to three checks on each side, with Student's interval", () => {
    const [effect] = serviceEffects(
      spindleHistory([90, 17_000, 17_100, 16_900, 18_000, 18_100, 17_900, 90], { events: [service(4)] }),
    );
    expect(effect).toMatchObject({
      beforeN: 17_000,
      afterN: 18_000,
      changeN: 1000,
      judged: "rose",
      eventId: "event-4",
    });
    const half = 2.776 * 100 * Math.sqrt(2 / 3);
    expect(Math.abs(effect!.highN! - effect!.changeN - half)).toBeLessThan(0.1);
  });

  it("speaks after the first check already, from the stated uncertainty", () => {
    const check = () => ({ standardUncertaintyN: 100 });
    const [effect] = serviceEffects(spindleHistory([17_000, 18_000], { events: [service(1)], check }));
    expect(effect).toMatchObject({ judged: "rose", changeN: 1000 });
    expect(effect!.highN! - 1000).toBeCloseTo(1.96 * 100 * Math.SQRT2, 6);
  });

  it("cannot tell from one check each without any uncertainty", () => {
    const [effect] = serviceEffects(spindleHistory([17_000, 18_000], { events: [service(1)] }));
    expect(effect).toMatchObject({ judged: "cannotTell", lowN: undefined });
  });

  it("takes checks only up to the neighbouring services", () => {
    const values = [10, 10, 10, 20, 21, 30, 30, 30];
    const effects = serviceEffects(spindleHistory(values, { events: [service(5, "springs"), service(3)] }));
    expect(effects.map((e) => [e.kind, e.beforeN, e.afterN])).toEqual([
      ["lubricated", 10, 20.5],
      ["springs", 20.5, 30],
    ]);
  });

  it("tells the effect of two services done between the same two checks at both", () => {
    const values = [10, 10, 10, 20, 21, 22, 30, 30];
    const twice = [service(3), { ...service(3, "springs"), eventId: "second" }, service(6)];
    const effects = serviceEffects(spindleHistory(values, { events: twice }));
    expect(effects.map((e) => [e.eventId, e.beforeN, e.afterN])).toEqual([
      ["event-3", 10, 21],
      ["second", 10, 21],
      ["event-6", 21, 30],
    ]);
  });

  it("counts a check of the service's day as before it when a later one of that day says so", () => {
    const events = [{ ...service(2), atMs: FIRST_MS + 90 * DAY_MS }];
    const history = spindleHistory([10, 12, 12, 20, 20], { events });
    const points = history.points.map((p, i) =>
      i === 1 || i === 2
        ? { ...p, atMs: FIRST_MS + 90 * DAY_MS + i * 3_600_000, reason: i === 2 ? "beforeService" : "planned" }
        : p,
    );
    const [effect] = serviceEffects({ ...history, points });
    expect(effect!.afterN).toBe(20);
    expect(effect!.beforeN).toBeCloseTo(34 / 3, 9);
  });

  it("says unchanged, and what became of the scatter inside the checks", () => {
    const check = (i: number) => ({ seriesSN: i < 6 ? 200 : 50 });
    const [effect] = serviceEffects(
      spindleHistory(
        rippled(12, 50, () => 18_000),
        { events: [service(6)], check },
      ),
    );
    expect(effect).toMatchObject({ judged: "unchanged", scatterRatio: 0.25 });
  });

  it("names another gauge or adapter", () => {
    const check = (i: number) => ({ gaugeId: i < 3 ? "gauge-1" : "gauge-2" });
    const [effect] = serviceEffects(spindleHistory([1, 2, 1, 4, 5, 4], { events: [service(3)], check }));
    expect(effect).toMatchObject({ otherGauge: true, otherAdapter: false });
  });

  it("waits for a check on both sides", () => {
    expect(serviceEffects(spindleHistory([1, 2], { events: [service(2)] }))).toEqual([]);
    expect(serviceEffects(spindleHistory([], { events: [service(2)] }))).toEqual([]);
  });
});
