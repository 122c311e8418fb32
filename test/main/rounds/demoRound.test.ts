import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";

let core: CoreInTemp;
let view: DockingView;
beforeAll(async () => {
  core = await coreInTemp({ demo: true });
  // A live link on the same gauge: docking takes the gauge over.
  await core.call("link.open", { source: { kind: "simulated" } });
  view = await core.call("docking.demo", {});
});
afterAll(() => core.close());

const codes = () => new Set(view.questions.map((q) => q.code));

describe("the simulated gauge back from the demo's round", () => {
  it("is read out of its live lines, whole, with its clock's offset", () => {
    expect(view.lines).toMatchObject({ incomplete: false, announced: view.takes.length });
    expect(view.source).toBe("port");
    expect(view.clock).toMatchObject({ assumed: false });
    // Started 73 minutes fast.
    expect(Math.abs(view.clock!.offsetMs + new Date().getTimezoneOffset() * 60_000 - 4_380_000)).toBeLessThan(10_000);
    expect(view.takes.every((take) => !take.badDate && take.atMs !== undefined)).toBe(true);
  });

  it("brings the slips of its day as questions with a proposal: nothing clamped, stored twice, two taken for each other", () => {
    for (const code of ["noClamping", "valueTwice", "swapped"] as const) expect(codes()).toContain(code);
    expect(view.questions.find((q) => q.code === "swapped")!.stops).toHaveLength(2);
    expect(view.missing).toHaveLength(1);
  });

  it("brings nothing new when it is docked again before or after its readings are filed", async () => {
    const before = await core.call("docking.demo", {});
    expect(before.takes).toHaveLength(view.takes.length);
    const swapped = before.questions.find((q) => q.code === "swapped")!;
    const other = new Map([
      [swapped.stops[0]!, swapped.stops[1]!],
      [swapped.stops[1]!, swapped.stops[0]!],
    ]);
    const zero = new Set(before.questions.filter((q) => q.code === "noClamping").flatMap((q) => q.takes));
    const kept = before.visits.filter((v) => v.stop !== undefined && !v.leftOut && !v.takes.some((t) => zero.has(t)));
    const reasons = Object.fromEntries(before.warnings.map((w) => [w.code, "looked at, in order"]));
    const filings = kept.map((v) => {
      const stop = before.stops[other.get(v.stop!) ?? v.stop!]!;
      return { spindleId: stop.spindleId, adapterId: stop.adapterId ?? null, takes: [...v.takes], factor: v.factor };
    });
    const used = new Set(filings.flatMap((f) => f.takes));
    const leftOut = [...before.takes.keys()].flatMap((take) => (used.has(take) ? [] : [{ take, why: "asked" }]));
    const { dockingId } = before;
    const filed = await core.call("docking.accept", { dockingId, filings, leftOut, answers: [], reasons });
    expect(filed.rows.map((row) => row.verdict)).toHaveLength(before.stops.length - 1);
    const after = await core.call("docking.demo", {});
    expect(after).toMatchObject({ takes: [], known: before.takes.length });
    const anew = await core.call("docking.demo", { anew: true });
    expect(anew.known).toBe(0);
    expect(anew.takes.length).toBeGreaterThanOrEqual(3 * (anew.stops.length - 1) + 2);
    expect(anew.roundId).not.toBe(before.roundId);
  });

  it("walks no round in the user's own records", async () => {
    const own = await coreInTemp();
    try {
      await expect(own.call("docking.demo", {})).rejects.toMatchObject({ failure: { key: "demoOnly" } });
      expect(await own.call("rounds.list")).toEqual([]);
    } finally {
      await own.close();
    }
  });
}, 60_000);
