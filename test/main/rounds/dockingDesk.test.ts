import { setTimeout as sleep } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { RoundView } from "../../../app/contract/roundViews.ts";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";
import { memoryDumps } from "../../support/memoryDumps.ts";
import { roundWorks } from "../../support/roundWorks.ts";

const nowMs = Date.parse("2026-06-10T15:00:00Z");
let core: CoreInTemp;
let round: RoundView;
let gaugeId: string;

beforeEach(async () => {
  core = await coreInTemp({ now: () => nowMs });
  const works = await roundWorks(core);
  gaugeId = works.gaugeId;
  const stops = works.spindleIds.map((spindleId) => ({ spindleId }));
  round = await core.call("rounds.save", { name: "r", on: "2026-06-10", gaugeId, made: "byHand", stops });
});
afterEach(() => core.close());

/** So many readings, spread over the stops, each a little another. */
const memoryOf = (count: number) =>
  memoryDumps
    .list(
      Array.from({ length: count }, (_, i) => ({
        number: i + 1,
        forceN: round.stops[i % round.stops.length]!.expectedN! + 10 * (i % 9),
        unit: "kN" as const,
        clockMs: nowMs - count * 20_000 + i * 20_000,
        location: Number(round.stops[i % round.stops.length]!.location),
        held: true,
      })),
      nowMs,
    )
    .join("");
const read = (text: string) => core.call("docking.read", { roundId: round.roundId, gaugeId, text });
const runningJob = async () => {
  for (;;) {
    const job = (await core.call("state.snapshot")).jobs.find((j) => j.what === "docking" && j.state === "running");
    if (job !== undefined) return job;
    await sleep(2);
  }
};

describe("reading a memory", () => {
  it("of ten thousand readings leaves the core free to answer others meanwhile", async () => {
    let isOver = false;
    const reading = read(memoryOf(10_000)).finally(() => {
      isOver = true;
    });
    let answered = 0;
    while (!isOver) {
      await core.call("rounds.getCalendar");
      if (!isOver) answered += 1;
      await sleep(10);
    }
    expect((await reading).takes).toHaveLength(10_000);
    expect(answered).toBeGreaterThan(10);
  }, 60_000);

  it("says to pages how it stands, and hands what was read to nobody but who asked", async () => {
    const view = await read(memoryOf(60));
    expect(view.takes).toHaveLength(60);
    const jobs = (await core.call("state.snapshot")).jobs.filter((job) => job.what === "docking");
    expect(jobs).toEqual([expect.objectContaining({ state: "finished", result: undefined })]);
    const said = core.pushes.filter((push) => push.event === "job.finished");
    expect(JSON.stringify(said)).not.toContain("takes");
  });

  it("can be stopped; what was read of this docking before stands on and can be filed", async () => {
    const first = await read(memoryOf(6));
    const again = core.call("docking.read", { dockingId: first.dockingId, text: memoryOf(10_000) });
    const ended = again.then(
      () => undefined,
      (cause: { failure?: unknown }) => cause.failure,
    );
    await core.call("job.stop", { jobId: (await runningJob()).jobId });
    expect(await ended).toMatchObject({ code: "refused", key: "jobStopped" });
    const kept = await core.call("docking.read", { dockingId: first.dockingId });
    expect(kept.takes).toHaveLength(6);
    const { rows } = await core.call("docking.accept", {
      dockingId: first.dockingId,
      filings: first.visits.map((v) => ({
        spindleId: first.stops[v.stop!]!.spindleId,
        adapterId: null,
        takes: [...v.takes],
        factor: 1,
      })),
      leftOut: [],
      answers: [],
    });
    expect(rows).toHaveLength(6);
  }, 60_000);

  it("asked twice at once counts both answers, the later one last", async () => {
    const file = "17.92;1\n18.02;2\n";
    const { dockingId } = await read(file);
    const [, both] = await Promise.all([
      core.call("docking.read", { dockingId, hints: { unit: "kN" } }),
      core.call("docking.read", { dockingId, hints: { columns: { 1: "number" } } }),
    ]);
    expect(both.undecided).toEqual([]);
    expect(both.columns.map((c) => c.field)).toEqual(["force", "number"]);
    expect((await core.call("docking.read", { dockingId })).takes.map((t) => t.valueN)).toEqual([17_920, 18_020]);
  });
});

it("a round's day is the works' own, wherever this computer's clock stands: at its first minutes nothing is outside it", async () => {
  const works = (await core.call("state.snapshot")).works;
  await core.call("works.save", { ...works, timeZone: "Pacific/Kiritimati" }); // fourteen hours ahead of UTC
  const { roundId, stops } = round;
  const at = Date.parse("2026-06-09T10:05:00Z"); // 00:05 of the 10th there
  const readings = stops.map((stop, i) => ({
    number: i + 1,
    forceN: stop.expectedN!,
    unit: "kN" as const,
    clockMs: at + i * 60_000,
    location: Number(stop.location),
    held: true,
  }));
  const text = memoryDumps.list([{ ...readings[0]!, clockMs: at - 600_000, location: 9 }, ...readings], nowMs).join("");
  const view = await core.call("docking.read", { roundId, gaugeId, text });
  const outside = view.questions.filter((q) => q.code === "dateOutside");
  expect(outside.map((q) => q.takes)).toEqual([[0]]); // the one at 23:55 of the day before
});
