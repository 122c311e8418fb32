import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";

describe("a spindle's page of the demo works", () => {
  let core: CoreInTemp;
  let spindleId: string;
  beforeAll(async () => {
    core = await coreInTemp({ demo: true });
    const rows = await core.call("spindles.list");
    spindleId = rows.find((row) => row.spindle.name === "Mill 2")!.spindle.spindleId;
  }, 60_000);
  afterAll(() => core.close());

  it("carries what only whole checks tell, as each check has it", async () => {
    const { details, trend } = await core.call("spindles.page", { spindleId });
    expect(details.map(({ checkId }) => checkId)).toEqual(trend.points.map(({ checkId }) => checkId));
    const { check } = await core.call("checks.get", { checkId: details.at(-1)!.checkId });
    expect(details.at(-1)).toEqual({ checkId: check.checkId, counter: check.counter, scatterN: check.series.sN });
    expect(check.counter).toBeGreaterThan(0);
  });

  it("goes by tool changes when asked to: the same checks, each at its counter", async () => {
    const { details, trend } = await core.call("spindles.page", { spindleId, xAxis: "counter" });
    expect(trend.axis.kind).toBe("counter");
    expect(trend.points.map(({ x }) => x)).toEqual(details.map(({ counter }) => counter));
  });

  it("says of every spindle when it is due as the due list does, and why, whichever axis it is drawn by", async () => {
    const { rows } = await core.call("rounds.due");
    expect(new Set(rows.map(({ why }) => why)).size).toBeGreaterThan(3);
    for (const item of rows) {
      for (const xAxis of ["date", "counter"] as const)
        expect((await core.call("spindles.page", { spindleId: item.spindleId, xAxis })).due).toEqual(item);
    }
  }, 60_000);

  it("brings the due list along with the ranking", async () => {
    expect((await core.call("spindles.fleet")).due).toEqual((await core.call("rounds.due")).rows);
  });

  it("stands beside its like in the ranking, those of the same taper and nominal force", async () => {
    const { like } = await core.call("spindles.fleet");
    const own = like.find((one) => one.spindleId === spindleId)!;
    const rows = await core.call("spindles.list");
    const { taper, limits } = rows.find((row) => row.spindle.spindleId === spindleId)!.spindle;
    const alike = rows.filter(
      (row) => row.last !== undefined && row.spindle.taper === taper && row.spindle.limits.nominalN === limits.nominalN,
    );
    expect(own.n).toBe(alike.length);
    expect(own.standsOut).toBe(true);
  });
});
