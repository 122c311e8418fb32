import { describe, expect, it } from "vitest";
import { iso376Proof } from "../../../../app/proof/iso376/iso376Proof.ts";
import { nextAct, standingOf } from "../../../../app/proof/plan/nextAct.ts";
import { presetPlan, proofMethods } from "../../../../app/proof/plan/ProofPlan.ts";
import type { ProofState, Taking } from "../../../../app/proof/plan/ProofState.ts";
import { proofActs } from "../../../../app/proof/plan/proofActs.ts";
import { cautionSentences, cautionsBefore, cautionsNow } from "../../../../app/proof/plan/proofCautions.ts";
import {
  confirmAct,
  putDown,
  readingsSoFar,
  repeatAct,
  type Stepped,
  skipAct,
  takeReading,
  takeUp,
} from "../../../../app/proof/plan/proofSteps.ts";

const at = "2026-06-01T08:00:00.000Z";
const fresh = (method: (typeof proofMethods)[number] = "working"): ProofState => ({
  plan: presetPlan(method, 30_000),
  gaugeCapacityN: 30_000,
  events: [],
});
const good = (forceN: number): Taking => ({
  referenceN: forceN,
  referenceStandardN: 1,
  indicationN: forceN * 1.001,
  n: 50,
  steady: true,
});
function must(stepped: Stepped): ProofState {
  if (stepped.kind === "refused") throw new Error(stepped.why);
  return stepped.state;
}
/** Does the next act as it asks. */
function step(state: ProofState): ProofState {
  const next = nextAct(state);
  if (next.kind !== "act") throw new Error(next.kind);
  return must(
    next.act.kind === "read"
      ? takeReading(state, next.index, good(next.act.targetN), at)
      : confirmAct(state, next.index, at),
  );
}
function until(state: ProofState, stop: (s: ProofState) => boolean): ProofState {
  let now = state;
  while (!stop(now)) now = step(now);
  return now;
}
const current = (state: ProofState) => {
  const next = nextAct(state);
  if (next.kind !== "act") throw new Error(next.kind);
  return next;
};
const atLoad = (n: number) => (s: ProofState) => {
  const { act } = current(s);
  return act.kind === "read" && act.direction === "up" && act.step === n;
};
const why = (stepped: Stepped) => (stepped.kind === "refused" ? stepped.why : "accepted");

describe("the steps of a proof", () => {
  it.each(proofMethods)("lead through the whole plan of %s, cautions first, and end", (method) => {
    const start = fresh(method);
    expect(current(start).act.kind).toBe("cautions");
    const done = until(start, (s) => nextAct(s).kind === "finished");
    expect(done.events).toHaveLength(proofActs(start.plan).length);
    const { runs, loadsN } = start.plan;
    expect(readingsSoFar(done).filter((r) => r.direction === "up")).toHaveLength(runs.length * loadsN.length);
  });

  it("give ISO 376 everything its class needs", () => {
    const done = until(fresh("iso376"), (s) => nextAct(s).kind === "finished");
    expect(iso376Proof(readingsSoFar(done), {})).toMatchObject({ class: "00", missing: [] });
  });

  it("count down what remains", () => {
    const start = fresh();
    const first = current(start).remaining;
    expect(current(step(start)).remaining).toBe(first - 1);
  });

  it("preload and mount before the first run, and again after each turn, but not for a repeat without one", () => {
    const kinds = proofActs(presetPlan("iso376", 30_000)).filter((a) => a.kind === "mount" || a.kind === "preload");
    expect(kinds.map((a) => `${a.kind} ${a.run}`)).toEqual([
      "mount 1",
      "preload 1",
      "preload 1",
      "preload 1",
      "mount 3",
      "preload 3",
      "mount 4",
      "preload 4",
    ]);
  });

  it("go on after a restart where they stood: the state is plain data", () => {
    const half = until(fresh("iso376"), atLoad(4));
    const back = JSON.parse(JSON.stringify(half)) as ProofState;
    expect(nextAct(back)).toEqual(nextAct(half));
    expect(readingsSoFar(step(back))).toEqual(readingsSoFar(step(half)));
  });

  it("refuse what is not next, and change nothing by it", () => {
    const state = Object.freeze(until(fresh(), atLoad(2)));
    const { index } = current(state);
    expect(why(takeReading(state, index + 1, good(18_000), at))).toBe("notNext");
    expect(why(confirmAct(state, index, at))).toBe("notNext");
    expect(why(takeReading(fresh(), 0, good(0), at))).toBe("notNext");
  });

  it.each([
    ["a load that moves", { steady: false }, "notSteady"],
    ["a gauge in overload", { spoiled: "overload" as const }, "overload"],
    ["a lost link", { spoiled: "linkLost" as const }, "linkLost"],
    ["a load far from its target", { referenceN: 14_000 }, "offTarget"],
    ["a load above the capacity", { referenceN: 31_000 }, "aboveCapacity"],
  ])("do not take %s", (_, changed, refusal) => {
    const state = until(fresh(), atLoad(2));
    expect(why(takeReading(state, current(state).index, { ...good(12_000), ...changed }, at))).toBe(refusal);
  });

  it("do not take the last load once more for the next", () => {
    const close = { ...fresh(), plan: { ...fresh().plan, loadsN: [20_000, 20_500, 30_000] } };
    const state = until(close, atLoad(2));
    expect(why(takeReading(state, current(state).index, good(20_010), at))).toBe("sameLoadTwice");
  });

  it("do not take a zero under load", () => {
    const state = until(fresh(), (s) => current(s).act.kind === "read");
    expect(why(takeReading(state, current(state).index, good(5000), at))).toBe("notUnloaded");
  });

  it("repeat a reading with a reason, keep the first on record, and go back to where they were", () => {
    const state = until(fresh(), atLoad(4));
    const third = current(state).index - 1;
    expect(why(repeatAct(state, third, " ", at))).toBe("reasonMissing");
    expect(why(repeatAct(state, third + 5, "somebody bumped the bench", at))).toBe("neverTaken");
    const again = must(repeatAct(state, third, "somebody bumped the bench", at));
    expect(current(again).index).toBe(third);
    const retaken = must(takeReading(again, third, { ...good(18_000), indicationN: 18_030 }, at));
    expect(current(retaken).index).toBe(third + 1);
    expect(readingsSoFar(retaken).at(-1)!.indication).toBe(18_030);
    expect(retaken.events.filter((e) => e.kind === "taken" && e.act === third)).toHaveLength(2);
  });

  it("can be put down and taken up, where they stood or from the start of the run, the work so far kept", () => {
    const state = until(
      fresh("iso376"),
      (s) => atLoad(5)(s) && current(s).act.kind === "read" && (current(s).act as { run: string }).run === "2",
    );
    const down = must(putDown(state, "the reference's port was lost", at));
    expect(nextAct(down)).toMatchObject({ kind: "putDown", reason: "the reference's port was lost" });
    expect(why(takeReading(down, current(state).index, good(15_000), at))).toBe("putDown");
    expect(why(putDown(down, "again", at))).toBe("putDown");
    expect(why(takeUp(state, "here", at))).toBe("notPutDown");
    const here = must(takeUp(down, "here", at));
    expect(current(here).index).toBe(current(state).index);
    const anew = must(takeUp(down, "runStart", at));
    expect(current(anew).act).toMatchObject({ kind: "read", run: "2", direction: "zeroBefore" });
    expect(readingsSoFar(anew).every((r) => r.run === "1")).toBe(true);
    expect(standingOf(anew).filter((s) => s.taking !== undefined)).toHaveLength(14); // zero, ten loads, two creep readings, zero
  });

  it("show every caution before the first load, and a word near the capacity", () => {
    expect(cautionsNow(fresh())).toEqual(cautionsBefore);
    expect(cautionsBefore.every((c) => cautionSentences[c].length > 20)).toBe(true);
    expect(cautionsNow(until(fresh(), atLoad(2)))).toEqual([]);
    expect(cautionsNow(until(fresh(), atLoad(5)))).toEqual(["nearCapacity"]);
    expect(cautionsNow(until(fresh(), (s) => nextAct(s).kind === "finished"))).toEqual([]);
  });
});

describe("an act left out", () => {
  it("counts as done with nothing taken, keeps its reason, and can be taken after all", () => {
    const before = until(step(fresh()), atLoad(2));
    const { index } = current(before);
    const skipped = must(skipAct(before, index, " no such weight ", at));
    expect(standingOf(skipped)[index]).toEqual({ done: true, taking: undefined });
    expect(skipped.events.at(-1)).toEqual({ kind: "skipped", act: index, at, reason: "no such weight" });
    expect(readingsSoFar(skipped).length).toBe(readingsSoFar(before).length);
    expect(atLoad(3)(skipped)).toBe(true);
    const again = must(repeatAct(skipped, index, "weight found", at));
    expect(current(again).index).toBe(index);
  });

  it("needs a reason, must be next, and is never the cautions", () => {
    expect(why(skipAct(fresh(), 0, "in a hurry", at))).toBe("notNext");
    const before = step(fresh());
    const { index } = current(before);
    expect(why(skipAct(before, index, "no", at))).toBe("reasonMissing");
    expect(why(skipAct(before, index + 1, "not needed", at))).toBe("notNext");
  });
});
