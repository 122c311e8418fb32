import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { RoundView } from "../../../app/contract/roundViews.ts";
import { type CoreInTemp, coreInTemp } from "../../support/coreInTemp.ts";
import { roundWorks } from "../../support/roundWorks.ts";

const DAY = 86_400_000;
const clock = { ms: 0 };
let core: CoreInTemp;
let works: Awaited<ReturnType<typeof roundWorks>>;
let round: RoundView;

const draft = async () => (await core.call("state.snapshot")).draft;
const get = () => core.call("rounds.get", { roundId: round.roundId });
const lead = () => core.call("rounds.lead", { roundId: round.roundId });
const pass = async (as: "later" | "leftOut", why: string) =>
  core.call("rounds.pass", { roundId: round.roundId, spindleId: (await draft()).tag.spindleId!, as, why });
const type = async (share = 1) => {
  const { seriesId, tag } = await draft();
  const stop = round.stops.find((s) => s.spindleId === tag.spindleId)!;
  await core.call("series.type", { seriesId, text: `${((stop.expectedN! * share) / 1000).toFixed(2)} kN` });
};
/** Types the value of the stop that is tagged and files it. */
const measure = async () => {
  await type();
  const { seriesId, tag } = await draft();
  clock.ms += 60_000;
  return core.call("series.accept", { seriesId, spindleId: tag.spindleId! });
};
const placeOf = async () => {
  const { tag } = await draft();
  return round.stops.findIndex((s) => s.spindleId === tag.spindleId);
};
const refusal = (promise: Promise<unknown>) =>
  promise.then(
    () => undefined,
    (cause: { failure?: { key?: string } }) => cause.failure?.key,
  );

beforeEach(async () => {
  clock.ms = Date.parse("2026-03-02T09:00:00Z");
  core = await coreInTemp({ now: () => clock.ms });
  works = await roundWorks(core, [10, 14, 19, 25]);
  clock.ms += 100 * DAY;
  const { today } = await core.call("rounds.due");
  round = await core.call("rounds.save", {
    name: "Halls",
    on: today,
    gaugeId: works.gaugeId,
    made: "byHand",
    stops: works.spindleIds.map((spindleId) => ({ spindleId })),
  });
});
afterEach(() => core.close());

describe("a round in hand", () => {
  it("tags spindle, adapter and the planned gauge, and after each filing the next stop, to the end", async () => {
    const seen: number[] = [];
    let now = await lead();
    expect(now).toMatchObject({ roundId: round.roundId, adapterBefore: undefined, tag: { gaugeId: works.gaugeId } });
    for (let i = 0; i < 4; i += 1) {
      seen.push(await placeOf());
      expect(now.tag.adapterId).toBe(round.stops[i]!.adapterId);
      now = (await measure()).draft;
    }
    expect(seen).toEqual([0, 1, 2, 3]);
    expect(now).toMatchObject({ roundId: round.roundId, tag: { spindleId: undefined, adapterId: undefined } });
    expect(await get()).toMatchObject({ state: "done" });
  });

  it("remembers the adapter of the stop before, so that a change can be said before it is needed", async () => {
    await lead();
    const changes: boolean[] = [];
    for (let i = 0; i < 4; i += 1) {
      const { adapterBefore, tag } = await draft();
      changes.push(adapterBefore !== undefined && adapterBefore !== tag.adapterId);
      await measure();
    }
    expect(changes).toEqual(round.stops.map((stop, i) => i > 0 && stop.adapterId !== round.stops[i - 1]!.adapterId));
    expect(changes.filter(Boolean)).toHaveLength(round.adapterChanges);
  });

  it("puts its id on the checks it led to, and on no other", async () => {
    await lead();
    const led = await measure();
    const other = await core.call("spindles.save", {
      name: "Elsewhere",
      machine: "",
      area: "",
      taper: "SK 40",
      limits: { minimumN: 20_000, nominalN: 25_000 },
      state: "inUse",
    });
    const { spindleId } = other.spindle;
    await core.call("series.tag", { seriesId: (await draft()).seriesId, spindleId });
    await core.call("series.type", { seriesId: (await draft()).seriesId, text: "25 kN" });
    clock.ms += 60_000;
    const strange = await core.call("series.accept", { seriesId: (await draft()).seriesId, spindleId });
    const roundOf = async (checkId: string) => (await core.call("checks.get", { checkId })).check.roundId;
    expect(await roundOf(led.row.checkId)).toBe(round.roundId);
    expect(await roundOf(strange.row.checkId)).toBeNull();
    expect(await placeOf()).toBe(1);
  });

  it("goes where a spindle's label sends it, with the round's adapter, and on from there round to the start", async () => {
    await lead();
    const tagged = await core.call("series.tag", {
      seriesId: (await draft()).seriesId,
      spindleId: round.stops[2]!.spindleId,
    });
    expect(tagged.tag.adapterId).toBe(round.stops[2]!.adapterId);
    const places: number[] = [];
    for (let i = 0; i < 4; i += 1) {
      places.push(await placeOf());
      await measure();
    }
    expect(places).toEqual([2, 3, 0, 1]);
  });

  it("comes back to what was put off, keeps the reasons, and ends with what was left out", async () => {
    await lead();
    await pass("later", "machine is running");
    expect(await placeOf()).toBe(1);
    await pass("leftOut", "guard is locked");
    await measure();
    await measure();
    expect(await placeOf()).toBe(0);
    expect((await get()).state).toBe("open");
    await measure();
    const { state, stops } = await get();
    expect(state).toBe("done");
    expect(stops.map((s) => s.passed)).toEqual([
      { as: "later", why: "machine is running" },
      { as: "leftOut", why: "guard is locked" },
      undefined,
      undefined,
    ]);
    expect(stops.map((s) => s.done !== undefined)).toEqual([true, false, true, true]);
  });

  it("lets nothing that was measured be lost by going on", async () => {
    await lead();
    await type();
    expect(await refusal(pass("later", "running"))).toBe("seriesInWork");
    expect(await refusal(core.call("rounds.lead", { roundId: null }))).toBe("seriesInWork");
    expect(await refusal(lead())).toBe("seriesInWork");
    const cleared = await core.call("series.clear", { seriesId: (await draft()).seriesId });
    expect(cleared).toMatchObject({ roundId: round.roundId, tag: { spindleId: round.stops[0]!.spindleId } });
    expect(await core.call("rounds.lead", { roundId: null })).toMatchObject({
      roundId: undefined,
      tag: { spindleId: undefined, gaugeId: works.gaugeId },
    });
  });

  it("goes back to the stop whose check is taken back, also when that check had ended the round", async () => {
    await lead();
    for (let i = 0; i < 3; i += 1) await measure();
    const last = await measure();
    expect((await get()).state).toBe("done");
    await core.call("checks.undo", { checkId: last.row.checkId });
    expect((await get()).state).toBe("open");
    expect(await placeOf()).toBe(3);
  });

  it("passes over a spindle that is retired meanwhile, and ends without it", async () => {
    await lead();
    const { spindleId } = round.stops[1]!;
    const { spindle } = (await core.call("spindles.list")).find((r) => r.spindle.spindleId === spindleId)!;
    await core.call("spindles.save", { ...spindle, state: "retired" });
    await measure();
    expect(await placeOf()).toBe(2);
    await measure();
    await measure();
    expect((await get()).state).toBe("done");
  });

  it("walked before its day is walked today, and its checks count for it", async () => {
    const tomorrow = await core.call("rounds.save", {
      name: "Ahead",
      on: "2027-01-11",
      made: "byHand",
      stops: [{ spindleId: works.spindleIds[0]! }],
    });
    await core.call("rounds.lead", { roundId: tomorrow.roundId });
    await measure();
    expect(await core.call("rounds.get", { roundId: tomorrow.roundId })).toMatchObject({
      state: "done",
      on: round.on,
    });
  });

  it("is refused when it has ended, and leads no more when it is cancelled on another page", async () => {
    await lead();
    await core.call("rounds.end", { roundId: round.roundId, state: "cancelled" });
    expect(await draft()).toMatchObject({ roundId: undefined, tag: { spindleId: undefined } });
    expect(await refusal(lead())).toBe("roundEnded");
    expect(await refusal(core.call("rounds.lead", { roundId: works.gaugeId }))).toBe("noRound");
    expect(
      await refusal(
        core.call("rounds.pass", {
          roundId: round.roundId,
          spindleId: works.spindleIds[0]!,
          as: "later",
          why: "running",
        }),
      ),
    ).toBe("otherRound");
  });
});

describe("two people with one round", () => {
  it("what one says of a stop is not taken for the next when the other has gone on meanwhile", async () => {
    await lead();
    const { roundId } = round;
    const said = (spindleId: string, why: string) => core.call("rounds.pass", { roundId, spindleId, as: "later", why });
    const first = round.stops[0]!.spindleId;
    await said(first, "machine is running");
    expect(await refusal(said(first, "no power"))).toBe("roundChanged");
    const { stops } = await core.call("rounds.get", { roundId });
    expect(stops.map((stop) => stop.passed?.why)).toEqual([
      "machine is running",
      ...stops.slice(1).map(() => undefined),
    ]);
  });
});

describe("a program that is started again", () => {
  it("finds the round in hand at the stop where it was", async () => {
    await lead();
    await measure();
    const { folder, dataFile } = core;
    await core.program.close();
    const again = await coreInTemp({ folder, now: () => clock.ms });
    try {
      expect(again.dataFile).toBe(dataFile);
      expect((await again.call("state.snapshot")).draft).toMatchObject({
        roundId: round.roundId,
        adapterBefore: round.stops[0]!.adapterId,
        tag: { spindleId: round.stops[1]!.spindleId },
      });
    } finally {
      await again.close();
      core = await coreInTemp({ folder });
    }
  });
});
