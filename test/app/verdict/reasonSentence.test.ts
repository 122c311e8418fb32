import { describe, expect, it } from "vitest";
import type { JudgeInput, Reason } from "../../../app/verdict/Judgement.ts";
import { judge } from "../../../app/verdict/judge.ts";
import { reasonSentence } from "../../../app/verdict/reasonSentence.ts";

const said = (input: Partial<JudgeInput>) =>
  judge({ valueN: 17_920, standardUncertaintyN: 100, limits: {}, rule: { rule: "simple" }, ...input }).reasons.map(
    (r) => reasonSentence(r),
  );

describe("reasonSentence", () => {
  it("says which limit was missed, with the figures and how the rule came to it", () => {
    expect(said({ limits: { minimumN: 18_500 } })[0]).toBe(
      "The force of 17920 N lies below the builder's minimum of 18500 N.",
    );
    expect(said({ limits: { minimumN: 17_800 }, rule: { rule: "guarded" } })[0]).toBe(
      "The force of 17920 N is not far enough above the builder's minimum of 17800 N to be accepted (guard band 200 N).",
    );
    expect(said({ limits: { minimumN: 17_920 }, rule: { rule: "probability" } })[0]).toContain(
      "(probability of conforming 50 %)",
    );
  });

  it("says a fall with both forces and the share it was held against", () => {
    expect(said({ baseline: { valueN: 22_400 } })[0]).toBe(
      "The force has fallen by 20 % since the baseline, from 22400 N to 17920 N; the rule speaks at 20 %.",
    );
    expect(said({ baseline: { valueN: 17_000 } })[0]).toMatch(
      /has risen by 5.41 % since the baseline of 17000 N, less than the 10 %/,
    );
  });

  it("writes forces as the caller wants them", () => {
    const reason: Reason = { code: "belowMinimum", valueN: 17_920, limitN: 18_500 };
    expect(reasonSentence(reason, (n) => `${n / 1000} kN`)).toBe(
      "The force of 17.92 kN lies below the builder's minimum of 18.5 kN.",
    );
  });

  it("is one sentence for every reason that judgements give", () => {
    const rules = ["simple", "guarded", "iso14253", "ilacG8", "probability"] as const;
    const seen = new Map<string, string>();
    for (const rule of rules) {
      for (const minimumN of [undefined, 17_700, 17_900, 18_000, 19_000]) {
        for (const maximumN of [undefined, 19_000.5, 20_000]) {
          for (const earlier of [undefined, 16_000, 16_290, 18_000, 19_900, 20_500, 22_350, 30_000]) {
            const comparison = earlier === undefined ? undefined : { valueN: earlier, standardUncertaintyN: 100 };
            const limits = { minimumN, warningN: minimumN === undefined ? 17_950 : undefined, maximumN };
            for (const reason of judge({
              valueN: 17_920,
              standardUncertaintyN: 100,
              limits,
              rule: { rule },
              baseline: comparison,
              previous: comparison,
            }).reasons) {
              seen.set(reason.code, reasonSentence(reason));
            }
          }
        }
      }
    }
    expect(seen.size).toBeGreaterThan(16);
    for (const sentence of seen.values()) expect(sentence).toMatch(/^[A-Z][^.!?]*( [^ ]*\d\.\d[^.!?]*)*\.$/);
    for (const sentence of seen.values()) expect(sentence).not.toMatch(/undefined|NaN|Infinity| {2}/);
  });

  it("gives back a code it does not know", () => {
    expect(reasonSentence({ code: "fromTheFuture" as Reason["code"] })).toBe("fromTheFuture");
    expect(reasonSentence({ code: "toString" as Reason["code"] })).toBe("toString");
  });
});
