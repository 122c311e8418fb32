import { describe, expect, it } from "vitest";
import type { SharedMove } from "../../../app/trend/commonMode.ts";
import { hintCaution, hintSentence } from "../../../app/trend/hintSentence.ts";
import type { Hint, HintPattern } from "../../../app/trend/hints.ts";
import { trendOf } from "../../../app/trend/trendOf.ts";
import { DAY_MS, FIRST_MS, ripple, rippled, spindleHistory } from "../../support/spindleHistory.ts";

type More = Parameters<typeof spindleHistory>[1];
const hintsOf = (values: readonly number[], more: More = {}, sharedMoves?: readonly SharedMove[]) =>
  trendOf(spindleHistory(values, more), { sharedMoves }).hints;
const find = (hints: readonly Hint[], pattern: HintPattern) => hints.find((h) => h.pattern === pattern);
const says = (hint: Hint | undefined, side: "for" | "against") => hint?.[side].map((e) => e.code) ?? [];

const tiring = rippled(16, 80, (i) => 20_000 - 70 * i);
const steadyS = (i: number) => ({ seriesSN: 100 + 10 * ripple[i % 25]! });
const growingS = (i: number) => ({ seriesSN: 80 + 12 * i + 5 * ripple[i % 25]! });

describe("hints", () => {
  it("sees tiring springs in a slow steady fall with steady scatter", () => {
    const hints = hintsOf(tiring, { check: steadyS });
    expect(hints[0]).toMatchObject({ pattern: "tiringSprings", strength: "strong" });
    expect(says(hints[0], "for")).toEqual(["steadyFall", "noStep", "scatterSteady"]);
    expect(says(hints[0], "against")).toEqual([]);
  });

  it("weighs the same fall with growing scatter towards the gripper", () => {
    const hints = hintsOf(tiring, { check: growingS });
    expect(says(find(hints, "tiringSprings"), "against")).toContain("scatterGrows");
    expect(says(find(hints, "wornGripper"), "for")).toEqual(["steadyFall", "scatterGrows"]);
    expect(says(find(hints, "dryGripper"), "for")).toContain("scatterGrows");
  });

  it("believes in a worn gripper more when lubricating did not help, in a dry one when it did", () => {
    const service = [{ atMs: FIRST_MS + 5 * 90 * DAY_MS - DAY_MS, kind: "lubricated" as const, newBaseline: false }];
    const unhelped = hintsOf(
      rippled(20, 60, (i) => 20_000 - 60 * i),
      { check: growingS, events: service },
    );
    expect(says(find(unhelped, "wornGripper"), "for")).toContain("cleaningDidNotHelp");
    const helped = hintsOf(
      rippled(20, 60, (i) => (i < 5 ? 18_000 : 20_400) - 60 * i),
      { check: growingS, events: service },
    );
    expect(says(find(helped, "dryGripper"), "for")).toContain("roseAfterCleaning");
    expect(says(find(helped, "wornGripper"), "against")).toContain("roseAfterCleaning");
  });

  it("sees a broken spring in a small step without a service, more so when a second one follows", () => {
    const one = find(hintsOf(rippled(18, 40, (i) => (i < 9 ? 20_000 : 19_400))), "brokenSpring");
    expect(one).toMatchObject({ strength: "some" });
    expect(says(one, "for")).toEqual(["stepDown", "sizeFitsSprings"]);
    const two = find(hintsOf(rippled(25, 40, (i) => 20_000 - (i < 9 ? 0 : 600) - (i < 17 ? 0 : 700))), "brokenSpring");
    expect(says(two, "for")).toContain("secondStep");
    expect(two!.strength).toBe("strong");
  });

  it("doubts it when the gauge was changed just then", () => {
    const check = (i: number) => ({ gaugeId: i < 9 ? "gauge-1" : "gauge-2" });
    const hints = hintsOf(
      rippled(18, 40, (i) => (i < 9 ? 20_000 : 19_400)),
      { check },
    );
    expect(says(find(hints, "brokenSpring"), "against")).toContain("gaugeChangedThen");
    expect(find(hints, "gaugeOff")).toMatchObject({ strength: "some" });
  });

  it("names the gauge first when the spindles measured with it moved together, and doubts all else", () => {
    const move: SharedMove = {
      by: "gauge",
      id: "gauge-1",
      or: [],
      sinceMs: FIRST_MS + 9 * 90 * DAY_MS,
      spindles: 12,
      spindleIds: ["spindle-1", "spindle-2"],
      shift: -0.03,
      p: 1e-6,
    };
    const values = rippled(18, 40, (i) => (i < 9 ? 20_000 : 19_400));
    expect(hintsOf(values, {}, [move])[0]).toMatchObject({ pattern: "gaugeOff", strength: "strong" });
    expect(says(find(hintsOf(values, {}, [move]), "brokenSpring"), "against")).toContain("movedWithOthers");
    expect(find(hintsOf(values, {}, []), "gaugeOff")).toBeUndefined();
  });

  it("suspects the setting when the force fell at a service, not when new springs raised it", () => {
    const at = (kind: "setting" | "springs") => [
      { atMs: FIRST_MS + 8 * 90 * DAY_MS - DAY_MS, kind, newBaseline: true },
    ];
    const fell = hintsOf(
      rippled(16, 40, (i) => (i < 8 ? 20_000 : 18_500)),
      { events: at("springs") },
    );
    expect(says(find(fell, "wrongSetting"), "for")).toEqual(["fellAtService"]);
    const rose = rippled(16, 40, (i) => (i < 8 ? 18_000 : 20_000));
    expect(find(hintsOf(rose, { events: at("springs") }), "wrongSetting")).toBeUndefined();
    const high = hintsOf(rose, { events: at("setting"), limits: { nominalN: 18_000 } });
    expect(says(find(high, "wrongSetting"), "for")).toEqual(["roseAtSetting", "aboveNominal"]);
  });

  it("sees a chip in one check off with the next one back", () => {
    const hint = find(hintsOf(rippled(14, 40, (i) => (i === 6 ? 16_000 : 20_000))), "taperChip");
    expect(hint).toMatchObject({ strength: "some" });
    expect(hint!.for[0]!.share).toBeCloseTo(-0.2, 2);
  });

  it("sees pressure left in the line when force is left after the release", () => {
    const check = (i: number) => ({ notReleased: i >= 9 });
    expect(
      find(
        hintsOf(
          rippled(12, 40, () => 20_000),
          { check },
        ),
        "backPressure",
      ),
    ).toMatchObject({ strength: "some" });
  });

  it("sees a growing creep", () => {
    const check = (i: number) => ({ creep: -0.001 * (1 + i) });
    const hint = find(
      hintsOf(
        rippled(12, 40, () => 20_000),
        { check },
      ),
      "dryGripper",
    );
    expect(says(hint, "for")).toEqual(["creepGrows"]);
    expect(hint!.strength).toBe("weak");
  });

  it("has none for a healthy spindle, and none for one never measured", () => {
    expect(
      hintsOf(
        rippled(20, 60, () => 20_000),
        { check: steadyS },
        [],
      ),
    ).toEqual([]);
    expect(hintsOf([])).toEqual([]);
  });

  it("never speaks as a verdict: each sentence gives grade and evidence, with the caution beside it", () => {
    const sentence = hintSentence(hintsOf(tiring, { check: growingS })[0]!);
    expect(sentence).toMatch(/^[A-Z][a-z ]+: (fits well|fits in part|cannot be ruled out)\. For it: .*\./);
    expect(hintCaution).toContain("builder's manual");
  });

  it("has words for every piece of evidence it can give", () => {
    const hints = [
      ...hintsOf(tiring, { check: growingS }),
      ...hintsOf(
        rippled(25, 40, (i) => 20_000 - (i < 9 ? 0 : 600) - (i < 17 ? 0 : 700)),
        { check: (i) => ({ adapterId: `a${i > 8}` }) },
      ),
      ...hintsOf(
        rippled(14, 40, (i) => (i === 6 ? 16_000 : 20_000)),
        { check: (i) => ({ notReleased: i === 13 }) },
      ),
    ];
    for (const hint of hints) expect(hintSentence(hint)).not.toMatch(/undefined|NaN/);
  });
});
