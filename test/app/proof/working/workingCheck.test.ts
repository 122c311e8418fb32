import { describe, expect, it } from "vitest";
import type { ProofReading } from "../../../../app/proof/data/ProofReading.ts";
import { isRefused, type ProofOptions } from "../../../../app/proof/method/ProofOptions.ts";
import type { PermissibleError } from "../../../../app/proof/working/PermissibleError.ts";
import { type WorkingCheck, workingCheck } from "../../../../app/proof/working/workingCheck.ts";
import type { DecisionRule } from "../../../../app/verdict/Judgement.ts";
import published from "../../../published/iso7500-classes.json" with { type: "json" };
import { plainReadings } from "../../../support/plainReadings.ts";

function check(
  rows: readonly ProofReading[],
  mpe?: PermissibleError,
  rule: DecisionRule = { rule: "guarded" },
  options: ProofOptions = {},
): WorkingCheck {
  const got = workingCheck(rows, mpe, rule, options);
  if (isRefused(got)) throw new Error(got.refused);
  return got;
}
const half = { kind: "relative", fraction: 0.005 } as const;

/** Three runs at 10, 20 and 30 kN; `error(load, run)` is what the gauge shows too much. */
const threeRuns = (error: (load: number, run: number) => number): readonly ProofReading[] =>
  [1, 2, 3].flatMap((run) =>
    [10, 20, 30].map((load) => ({
      reference: load,
      indication: load + error(load, run),
      direction: "up" as const,
      run: String(run),
      step: undefined,
      positionDeg: undefined,
    })),
  );

describe("workingCheck", () => {
  // ISO 7500-1 formulas, from memory, with constructed figures; its classes belong to testing machines.
  it("meets the error and repeatability of the worked example", () => {
    const { inputs, expected } = published.worked_example;
    const got = check(
      plainReadings(
        inputs.indications.map(() => inputs.true_force),
        inputs.indications,
      ),
    );
    expect(Math.abs(got.steps[0]!.q - expected.q)).toBeLessThan(1e-9);
    expect(Math.abs(got.steps[0]!.b - expected.b)).toBeLessThan(1e-9);
  });

  it("gives the reversibility as a share of the load and the zero as a share of the greatest indication", () => {
    const extra = (direction: ProofReading["direction"], reference: number, indication: number): ProofReading => ({
      ...threeRuns(() => 0)[0]!,
      reference,
      indication,
      direction,
    });
    const got = check([
      extra("zeroBefore", 0, 0),
      ...threeRuns(() => 0),
      extra("down", 20, 20.03),
      extra("zeroAfter", 0, 0.006),
    ]);
    expect(got.steps.map((s) => s.v)).toEqual([undefined, expect.closeTo(0.15, 9), undefined]);
    expect(got.f0).toBeCloseTo(0.02, 9);
  });

  it("is conforming well inside the permissible error, and not well outside", () => {
    const noise = (_: number, run: number) => 0.002 * (run - 2);
    expect(check(threeRuns(noise), half).conformity).toBe("conforming");
    const off = check(
      threeRuns((load, run) => 0.01 * load + noise(load, run)),
      half,
    );
    expect(off.conformity).toBe("nonConforming");
    expect(off.steps.map((s) => s.q)).toEqual([1, 1, 1].map((q) => expect.closeTo(q, 9)));
  });

  it("keeps off the limit by its uncertainty: undecided where the interval straddles it", () => {
    const near = threeRuns((load, run) => 0.0048 * load + 0.02 * (run - 2));
    expect(check(near, half, { rule: "iso14253" }).conformity).toBe("undecided");
    expect(check(near, half, { rule: "simple" }).conformity).toBe("conforming");
    expect(check(near, half, { rule: "guarded" }).conformity).toBe("nonConforming");
    const step = check(near, half, { rule: "ilacG8" }).steps[2]!;
    expect(step.zone).toBe("conditionalPass");
    expect(step.probabilityConforming).toBeGreaterThan(0.5);
    expect(step.probabilityConforming).toBeLessThan(0.95);
  });

  it("knows a permissible error of the load, of the greatest load, and as a force", () => {
    const rows = threeRuns(() => 0);
    const permissible = (mpe: PermissibleError) => check(rows, mpe).steps.map((s) => s.permissible);
    expect(permissible(half)).toEqual([0.05, 0.1, 0.15]);
    expect(permissible({ kind: "ofGreatest", fraction: 0.01 })).toEqual([0.3, 0.3, 0.3]);
    expect(permissible({ kind: "absolute", force: 0.2 })).toEqual([0.2, 0.2, 0.2]);
  });

  it("decides nothing without a permissible error, and shows the errors", () => {
    const got = check(threeRuns(() => 0.1));
    expect(got.conformity).toBeUndefined();
    expect(got.steps[0]).toMatchObject({
      error: expect.closeTo(0.1, 9),
      conformity: undefined,
      permissible: undefined,
    });
  });

  it("cannot tell from one run, except by the rule that asks for no uncertainty", () => {
    const once = threeRuns(() => 0.01).slice(0, 3);
    expect(check(once, half)).toMatchObject({
      conformity: "undecided",
      remarks: expect.arrayContaining([{ code: "needsRuns" }]),
    });
    expect(check(once, half, { rule: "simple" }).conformity).toBe("conforming");
  });

  it("pools single readings over the steps and counts what whole runs share apart", () => {
    const got = check(threeRuns((load, run) => 0.001 * load * (run - 2)));
    const top = got.steps[2]!.uncertainty.contributions;
    expect(top.map((c) => [c.source, c.degreesOfFreedom])).toEqual([
      ["repeatability", 4],
      ["reproducibility", 2],
    ]);
    // Runs 0.1 % apart at 30 kN: the mean square between runs is (0.001)^2 x (10^2 + 20^2 + 30^2), a 30^2/1400 share of it, over three.
    expect(top[1]!.standard).toBeCloseTo(Math.sqrt(((900 / 1400) * 1e-6 * 1400) / 3), 9);
    expect(top[0]!.standard).toBeCloseTo(0, 9);
  });

  it("counts a resolution only where the readings do not scatter by as much", () => {
    const still = check(
      threeRuns(() => 0),
      half,
      { rule: "guarded" },
      { resolution: 0.01 },
    );
    expect(still.steps[0]!.uncertainty.contributions).toContainEqual({
      source: "resolution",
      standard: 0.01 / Math.sqrt(12),
      degreesOfFreedom: Infinity,
    });
    const lively = check(
      threeRuns((_, run) => 0.05 * (run - 2)),
      half,
      { rule: "guarded" },
      { resolution: 0.01 },
    );
    expect(lively.steps[0]!.uncertainty.contributions.map((c) => c.source)).not.toContain("resolution");
  });

  it("leaves a zero load out and refuses readings without any load", () => {
    expect(check(plainReadings([0, 10, 10], [0, 10, 10])).steps).toHaveLength(1);
    const got = workingCheck(plainReadings([0, 0], [0, 0]), half, { rule: "simple" }, {});
    expect(isRefused(got) && got.refused).toMatch(/at least one reading under a load/);
  });
});
