import { setTimeout as sleep } from "node:timers/promises";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { RoundView } from "../../../app/contract/roundViews.ts";
import { type CoreInTemp, coreInTemp, fileTyped } from "../../support/coreInTemp.ts";
import { acceptedAsShown, fullMemory, yesterday } from "../../support/fullMemory.ts";
import { roundWorks } from "../../support/roundWorks.ts";

const MOST = 10_000;
/** Enough to be filed in a thread. */
const MANY = 600;
/** Filed in a thread, by this computer's own clock. */
const nowMs = Date.now();
let core: CoreInTemp;
let round: RoundView;
let gaugeId: string;

beforeEach(async () => {
  core = await coreInTemp();
  const works = await roundWorks(core);
  gaugeId = works.gaugeId;
  const stops = works.spindleIds.map((spindleId) => ({ spindleId }));
  round = await core.call("rounds.save", {
    name: "r",
    on: yesterday(nowMs),
    gaugeId,
    made: "byHand",
    stops,
  });
});
afterEach(() => core.close());

const read = (text: string) => core.call("docking.read", { gaugeId, text, roundId: round.roundId });
const checkCount = async () =>
  (await core.call("spindles.list")).reduce((sum, { checkCount: count }) => sum + count, 0);

describe("a docking of ten thousand readings", () => {
  it("is accepted whole, holds up the core no longer than a moment, and docked again adds nothing", async () => {
    const text = fullMemory(round.stops, MOST, nowMs);
    const view = await read(text);
    expect(view.takes).toHaveLength(MOST);
    expect(view.questions.length).toBeGreaterThan(9_000);
    const input = acceptedAsShown(view);
    const before = await checkCount();
    let answered = 0;
    let isOver = false;
    const filing = core.call("docking.accept", input).finally(() => {
      isOver = true;
    });
    while (!isOver) {
      await core.call("rounds.getCalendar");
      await sleep(5);
      if (!isOver) answered += 1;
    }
    const { rows, again } = await filing;
    expect(again).toBe(false);
    expect(rows).toHaveLength(round.stops.length);
    expect(await checkCount()).toBe(before + round.stops.length);
    expect(answered).toBeGreaterThan(5);
    expect(core.heard("docking.filed")).toBe(1);
    expect((await core.call("rounds.get", { roundId: round.roundId })).state).toBe("done");
    // Accepted again, and docked again.
    expect(await core.call("docking.accept", input)).toMatchObject({ again: true, rows: { length: rows.length } });
    expect(await read(text)).toMatchObject({ known: MOST, takes: [] });
    expect(await checkCount()).toBe(before + round.stops.length);
  }, 120_000);

  it("pressed twice is filed once", async () => {
    const view = await read(fullMemory(round.stops, MANY, nowMs));
    const input = acceptedAsShown(view);
    const before = await checkCount();
    const [first, second] = await Promise.all([core.call("docking.accept", input), core.call("docking.accept", input)]);
    expect([first.again, second.again]).toEqual([false, true]);
    expect(await checkCount()).toBe(before + round.stops.length);
  }, 120_000);

  it("of two pages that accept it one is told, by name and in whole", async () => {
    const text = fullMemory(round.stops, MANY, nowMs);
    const [one, two] = [await read(text), await read(text)];
    const before = await checkCount();
    const answers = await Promise.allSettled(
      [one, two].map((view) => core.call("docking.accept", acceptedAsShown(view))),
    );
    expect(answers[0]!.status).toBe("fulfilled");
    expect(answers[1]).toMatchObject({ reason: { failure: { code: "conflict", key: "dockedMeanwhile" } } });
    expect(await checkCount()).toBe(before + round.stops.length);
  }, 120_000);

  it("goes in beside a check that is filed at the bench meanwhile", async () => {
    const input = acceptedAsShown(await read(fullMemory(round.stops, MANY, nowMs)));
    const before = await checkCount();
    const filing = core.call("docking.accept", input);
    let typed = 0;
    const isOver = filing.then(() => true);
    while (typed < 3 && !(await Promise.race([isOver, sleep(100, false)]))) {
      await fileTyped(core, round.stops[0]!.spindleId, "10.01 kN");
      typed += 1;
    }
    expect((await filing).rows).toHaveLength(round.stops.length);
    expect(typed).toBeGreaterThan(0);
    expect(await checkCount()).toBe(before + round.stops.length + typed);
  }, 120_000);
});
