import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { JudgeInput, ReasonCode } from "../../../app/verdict/Judgement.ts";
import { judge } from "../../../app/verdict/judge.ts";

const base: JudgeInput = { valueN: 18_000, standardUncertaintyN: 100, limits: {}, rule: { rule: "simple" } };
const given = (over: Partial<JudgeInput>): JudgeInput => Object.freeze({ ...base, ...over });
const first = (input: JudgeInput): ReasonCode => judge(input).reasons[0]!.code;
const codes = (input: JudgeInput): ReasonCode[] => judge(input).reasons.map(({ code }) => code);

describe("judge: the order of the verdict", () => {
  it("cannot tell without a valid force, whatever the limits", () => {
    const judgement = judge(given({ valueN: undefined, limits: { minimumN: 20_000 } }));
    expect(judgement).toMatchObject({
      verdict: "cannotTell",
      conformity: "undecided",
      reasons: [{ code: "noValidForce" }],
    });
    expect(judgement.probabilityConforming).toBeUndefined();
  });

  it("stops below the minimum before anything else is said", () => {
    const input = given({
      limits: { minimumN: 18_001, warningN: 18_002, maximumN: 18_003 },
      baseline: { valueN: 30_000 },
    });
    expect(judge(input).verdict).toBe("stop");
    expect(codes(input).slice(0, 2)).toEqual(["belowMinimum", "fellFromBaseline"]);
  });

  it("asks to act above the maximum", () => {
    expect(judge(given({ limits: { maximumN: 17_999 } })).verdict).toBe("act");
    expect(first(given({ limits: { maximumN: 17_999 } }))).toBe("aboveMaximum");
  });

  it("asks to act on a fall at the act limit before an undecided minimum", () => {
    const input = given({ rule: { rule: "iso14253" }, limits: { minimumN: 17_950 }, previous: { valueN: 22_500 } });
    expect(judge(input)).toMatchObject({ verdict: "act", conformity: "undecided" });
    expect(codes(input)).toEqual(expect.arrayContaining(["fellFromPrevious", "undecidedAtMinimum"]));
  });

  it("cannot tell at an undecided minimum before a fall at the caution limit", () => {
    const input = given({ rule: { rule: "iso14253" }, limits: { minimumN: 17_950 }, baseline: { valueN: 20_000 } });
    expect(judge(input).verdict).toBe("cannotTell");
    expect(first(input)).toBe("undecidedAtMinimum");
  });

  it("watches below the warning limit, and on a fall or a rise at the caution limit", () => {
    expect(first(given({ limits: { minimumN: 15_000, warningN: 18_001 } }))).toBe("belowWarning");
    expect(judge(given({ limits: { minimumN: 15_000, warningN: 18_001 } })).verdict).toBe("watch");
    expect(judge(given({ baseline: { valueN: 20_000 } })).verdict).toBe("watch");
    expect(first(given({ previous: { valueN: 16_000 } }))).toBe("roseFromPrevious");
    expect(judge(given({ previous: { valueN: 16_000 } })).verdict).toBe("watch");
  });

  it.each<[string, Partial<JudgeInput>, ReasonCode]>([
    ["a minimum", { limits: { minimumN: 15_000 } }, "withinLimits"],
    ["a maximum", { limits: { maximumN: 25_000 } }, "withinLimits"],
    ["a warning limit", { limits: { warningN: 17_000 } }, "aboveWarning"],
    ["a baseline", { baseline: { valueN: 18_500 } }, "holdsBaseline"],
  ])("is good where %s is met", (_, over, code) => {
    expect(judge(given(over)).verdict).toBe("good");
    expect(first(given(over))).toBe(code);
  });

  it.each<[string, Partial<JudgeInput>]>([
    ["nothing", {}],
    ["a nominal figure alone", { limits: { nominalN: 18_000 } }],
    ["a previous check alone", { previous: { valueN: 18_100 } }],
  ])("cannot tell with %s", (_, over) => {
    expect(judge(given(over))).toMatchObject({ verdict: "cannotTell", conformity: "undecided" });
    expect(first(given(over))).toBe("noLimits");
  });

  // Common practice, no source: the same unit fallen from 900 to 569 is taken out and serviced.
  it("asks to act on a fall from 900 to 569", () => {
    const judgement = judge(
      given({ valueN: 569, standardUncertaintyN: 5, baseline: { valueN: 900, standardUncertaintyN: 5 } }),
    );
    expect(judgement.verdict).toBe("act");
    expect(judgement.dropFromBaseline).toBeCloseTo(0.3678, 4);
  });
});

describe("judge: borders", () => {
  // Decimal tenths are not exact in binary; on paper each of these lies exactly on the limit.
  it.each([
    [900, 810, 0.1],
    [0.9, 0.81, 0.1],
    [1000.1, 900.09, 0.1],
    [17.3, 15.57, 0.1],
    [3, 2.1, 0.3],
    [70, 49.7, 0.29],
  ])("counts a fall from %d to %d as at the limit of %d", (baseline, value, caution) => {
    const at = given({
      valueN: value,
      standardUncertaintyN: 1e-6,
      baseline: { valueN: baseline },
      cautionDrop: caution,
      actDrop: 0.5,
    });
    expect(judge(at).verdict).toBe("watch");
    expect(judge({ ...at, cautionDrop: caution / 2, actDrop: caution }).verdict).toBe("act");
    expect(judge({ ...at, valueN: value * (1 + 1e-9) }).verdict).toBe("good");
  });

  it("counts a rise of just the caution limit as at it", () => {
    for (const [baseline, value] of [
      [900, 990],
      [0.3, 0.33],
      [17.3, 19.03],
    ] as const) {
      const at = given({ valueN: value, standardUncertaintyN: 1e-6, baseline: { valueN: baseline } });
      expect(judge(at).verdict).toBe("watch");
      expect(judge({ ...at, valueN: value * (1 - 1e-9) }).verdict).toBe("good");
    }
  });

  it("accepts a value on the minimum, the maximum and the warning limit", () => {
    const on = given({ valueN: 0.3, standardUncertaintyN: 0.01, limits: { minimumN: 0.1 + 0.2, warningN: 0.1 + 0.2 } });
    expect(judge(on)).toMatchObject({ verdict: "good", conformity: "conforming" });
    expect(judge(given({ valueN: 0.1 + 0.2, standardUncertaintyN: 0.01, limits: { maximumN: 0.3 } })).verdict).toBe(
      "good",
    );
  });

  it("accepts a value on the guard band although the sum is rounded", () => {
    // 15.1 + 2 x 0.1 is 15.299999999999999 in binary, 15 + 3 x 0.1 is 15.3
    const on = given({
      valueN: 15.3,
      standardUncertaintyN: 0.1,
      limits: { minimumN: 15.1 },
      rule: { rule: "guarded" },
    });
    expect(judge(on).conformity).toBe("conforming");
    expect(judge({ ...on, valueN: 15.3 - 1e-9 }).conformity).toBe("nonConforming");
  });
});

describe("judge: what stands beside", () => {
  it("names an interval that straddles the warning, the fall limits and the rise, without letting it decide", () => {
    const input = given({
      limits: { minimumN: 15_000, warningN: 17_900 },
      baseline: { valueN: 19_900, standardUncertaintyN: 100 },
    });
    expect(judge(input).verdict).toBe("good");
    expect(codes(input)).toEqual(expect.arrayContaining(["straddlesWarning", "straddlesCautionFromBaseline"]));
    expect(codes(given({ previous: { valueN: 16_380 } }))).toContain("straddlesRiseFromPrevious");
    expect(codes(given({ previous: { valueN: 22_480 } }))).toContain("straddlesActFromPrevious");
  });

  it("lets a common scale error cancel out of the interval of a fall", () => {
    const input = (correlation: number) =>
      given({ standardUncertaintyN: 180, baseline: { valueN: 19_900, standardUncertaintyN: 199, correlation } });
    expect(codes(input(0))).toContain("straddlesCautionFromBaseline");
    expect(codes(input(1))).not.toContain("straddlesCautionFromBaseline");
  });

  it("names a straddled minimum under simple acceptance, which itself has no answer for it", () => {
    expect(codes(given({ limits: { minimumN: 17_900 } }))).toEqual(["withinLimits", "straddlesMinimum"]);
    expect(codes(given({ limits: { minimumN: 17_700 } }))).toEqual(["withinLimits"]);
  });

  it("says of a guarded refusal that the value itself lies inside", () => {
    const input = given({ limits: { minimumN: 17_900 }, rule: { rule: "guarded" } });
    expect(judge(input).verdict).toBe("stop");
    expect(judge(input).reasons[0]).toMatchObject({ code: "guardedAtMinimum", limitN: 17_900, expandedN: 200 });
  });

  it("cannot tell where each limit alone is met but both together are not sure enough", () => {
    const input = given({
      limits: { minimumN: 17_820, maximumN: 18_180 },
      rule: { rule: "probability", threshold: 0.95 },
    });
    expect(judge(input)).toMatchObject({ verdict: "cannotTell", conformity: "undecided" });
    expect(first(input)).toBe("undecidedBetweenLimits");
  });
});

describe("judge: what must always hold", () => {
  const force = fc.integer({ min: 1, max: 60_000 });
  const inputs = fc
    .record({
      valueN: force,
      standardUncertaintyN: fc.integer({ min: 1, max: 3000 }),
      sorted: fc.array(force, { minLength: 3, maxLength: 3 }).map((a) => a.toSorted((x, y) => x - y)),
      has: fc.array(fc.boolean(), { minLength: 5, maxLength: 5 }),
      rule: fc.constantFrom("simple", "guarded", "iso14253", "ilacG8", "probability" as const),
      earlier: fc.array(force, { minLength: 2, maxLength: 2 }),
    })
    .map(
      ({ valueN, standardUncertaintyN, sorted, has, rule, earlier }): JudgeInput => ({
        valueN,
        standardUncertaintyN,
        rule: { rule },
        limits: {
          minimumN: has[0] ? sorted[0] : undefined,
          warningN: has[1] ? sorted[1] : undefined,
          maximumN: has[2] ? sorted[2] : undefined,
        },
        baseline: has[3] ? { valueN: earlier[0]! } : undefined,
        previous: has[4] ? { valueN: earlier[1]! } : undefined,
      }),
    );
  const scaled = (input: JudgeInput, by: number): JudgeInput => ({
    ...input,
    valueN: input.valueN! * by,
    standardUncertaintyN: input.standardUncertaintyN * by,
    limits: Object.fromEntries(Object.entries(input.limits).map(([k, v]) => [k, v === undefined ? undefined : v * by])),
    baseline: input.baseline && { valueN: input.baseline.valueN * by },
    previous: input.previous && { valueN: input.previous.valueN * by },
  });

  it("does not depend on the unit", () => {
    fc.assert(
      fc.property(inputs, fc.constantFrom(0.001, 0.1, 4.4482216152605), (input, by) => {
        const [one, other] = [judge(input), judge(scaled(input, by))];
        expect([other.verdict, other.conformity, other.zone]).toEqual([one.verdict, one.conformity, one.zone]);
      }),
    );
  });

  it("never calls a force good that does not conform", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const { verdict, conformity } = judge(input);
        const limited = input.limits.minimumN !== undefined || input.limits.maximumN !== undefined;
        if (verdict === "good" && limited) expect(conformity).toBe("conforming");
        if (verdict === "stop") expect(input.limits.minimumN).toBeDefined();
      }),
    );
  });

  it("gives a decisive reason and a probability within 0 and 1", () => {
    fc.assert(
      fc.property(inputs, (input) => {
        const { reasons, probabilityConforming: p = 0 } = judge(input);
        expect(reasons.length).toBeGreaterThan(0);
        expect(p).toBeGreaterThanOrEqual(0);
        expect(p).toBeLessThanOrEqual(1);
      }),
    );
  });

  it("refuses an input at fault with its words", () => {
    expect(() => judge(given({ limits: { minimumN: 2, maximumN: 1 } }))).toThrow(
      /minimumN 2 lies over limits.maximumN 1/,
    );
  });
});
