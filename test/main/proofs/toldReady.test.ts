import { beforeEach, describe, expect, it } from "vitest";
import type { TakeRefusal } from "../../../app/contract/proofViews.ts";
import type { Look } from "../../../main/proofs/LiveWatch.ts";
import { ToldReady } from "../../../main/proofs/ToldReady.ts";

const taking = { indicationN: 15_045, referenceShownN: 15_000, n: 30 };
const look = (index: number, why?: TakeRefusal): Look => ({
  watch: {
    proofId: "p",
    index,
    targetN: 15_000,
    gauge: { state: "open", forceN: 15_045, steady: why === undefined, share: 0 },
    reference: undefined,
    phase: why === undefined ? "ready" : "reading",
    waitLeftS: 0,
    readLeftS: 0,
    why,
    offset: undefined,
  },
  taking: why === undefined ? taking : undefined,
});

let ready: ToldReady;
beforeEach(() => {
  ready = new ToldReady();
  ready.tell(look(5), 100);
});

describe("a reading that was told as ready", () => {
  it("is taken as told when a bar stirs before the hand comes", () => {
    expect(ready.atHand(look(5, "notSteady"), 100.4)).toEqual(taking);
    ready.tell(look(5, "notSteady"), 100.25); // told since: the eye has not followed yet
    expect(ready.atHand(look(5, "notSteady"), 100.9)).toEqual(taking);
  });

  it("is not taken a second later", () => {
    expect(ready.atHand(look(5, "notSteady"), 101.01)).toBeUndefined();
  });

  it("gives way to what stands now", () => {
    const now = { ...look(5), taking: { ...taking, indicationN: 15_046 } };
    expect(ready.atHand(now, 100.1)?.indicationN).toBe(15_046);
  });

  it.each(["offTarget", "overload", "aboveCapacity", "noLink", "waiting", "notUnloaded"] as const)(
    "is not taken when the load says %s",
    (why) => {
      expect(ready.atHand(look(5, why), 100.1)).toBeUndefined();
    },
  );

  it("is of its own act alone, and is taken once", () => {
    expect(ready.atHand(look(6, "notSteady"), 100.1)).toBeUndefined();
    ready.forget();
    expect(ready.atHand(look(5, "notSteady"), 100.1)).toBeUndefined();
  });
});
