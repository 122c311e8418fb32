import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../support/coreInTemp.ts";
import { longestTurn } from "../support/longestTurn.ts";

let core: CoreInTemp;
beforeEach(async () => {
  core = await coreInTemp();
});
afterEach(() => core.close());

const until = async (holds: () => boolean | Promise<boolean>) => {
  for (let i = 0; i < 500; i += 1) {
    if (await holds()) return;
    await new Promise((done) => setTimeout(done, 20));
  }
  expect.fail("it did not come to that in ten seconds");
};

describe("a page that looks at the core", () => {
  it("finds everything in one snapshot, numbered like the last event before it", async () => {
    await smallWorks(core);
    const snapshot = await core.call("state.snapshot");
    expect(snapshot.seq).toBe(core.pushes.at(-1)!.seq);
    expect(snapshot.program).toMatchObject({ demo: false, empty: false, host: "loopback" });
  });

  it("is told of every check and spindle, in unbroken numbers", async () => {
    const { spindleId } = await smallWorks(core);
    await fileTyped(core, spindleId, "18 kN");
    const numbers = core.pushes.map((push) => push.seq);
    expect(numbers).toEqual(numbers.map((_, i) => i + 1));
    expect(core.heard("check.filed")).toBe(1);
  });

  it("sees the worst first in a ranking that is worked out once until something is filed", async () => {
    const { spindleId } = await smallWorks(core);
    const other = await core.call("spindles.save", {
      name: "Lathe 4",
      machine: "",
      area: "",
      taper: "SK40",
      limits: { minimumN: 9_000 },
      state: "inUse",
    });
    await fileTyped(core, spindleId, "18 kN");
    await fileTyped(core, other.spindle.spindleId, "8 kN");
    const first = await core.call("spindles.fleet");
    expect(first.rows[0]).toMatchObject({ spindleId: other.spindle.spindleId, why: { code: "stopped" } });
    expect(await core.call("spindles.fleet")).toBe(first); // the same object: nothing was worked out again
    await fileTyped(core, other.spindle.spindleId, "12 kN", "afterService");
    expect(await core.call("spindles.fleet")).not.toBe(first);
  });
});

describe("long work", () => {
  it("leaves the core free for the gauge: no wait of 50 ms while the records are verified and ranked", async () => {
    const demo = await coreInTemp({ demo: true });
    const longest = longestTurn();
    await demo.call("records.verify");
    await demo.call("spindles.fleet");
    await until(() => demo.heard("job.finished") >= 2);
    const longestMs = longest.stop();
    const finished = demo.pushes
      .filter((push) => push.event === "job.finished")
      .map((push) => (push.data as { what: string; state: string }).state);
    expect(finished).toEqual(["finished", "finished"]);
    expect(longestMs).toBeLessThan(50);
    await demo.close();
  });
});

describe("the demo works", () => {
  it("stand in a file of their own, fill every page, and never touch the user's", async () => {
    const before = await core.call("state.snapshot");
    expect(before.program.empty).toBe(true);
    await core.call("program.openDemo");
    const demo = await core.call("state.snapshot");
    expect(demo.program.demo).toBe(true);
    expect(demo.program.dataFile).not.toBe(before.program.dataFile);
    const spindles = await core.call("spindles.list");
    expect(spindles.length).toBeGreaterThanOrEqual(12);
    expect(new Set(spindles.map((row) => row.verdict))).toEqual(
      new Set(["good", "watch", "stop", "cannotTell", undefined]),
    );
    const { commonMode } = await core.call("spindles.fleet");
    const gauges = await core.call("gauges.list");
    const named = gauges
      .filter(({ gauge }) => commonMode.some((move) => move.id === gauge.gaugeId))
      .map(({ gauge }) => gauge.name);
    expect(named).toEqual(["Gauge 2"]); // the one that was dropped
    await core.call("program.leaveDemo");
    expect(await core.call("spindles.list")).toEqual([]);
  });
});
