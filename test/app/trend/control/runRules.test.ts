import { describe, expect, it } from "vitest";
import { allRunRules, defaultRunRules, runRules, zoneRules } from "../../../../app/trend/control/runRules.ts";
import published from "../../../published/control-chart-constants-rules.json" with { type: "json" };
import { seededNormal } from "../../../support/seededNormal.ts";

describe("runRules", () => {
  // Journal of Quality Technology 16 (1984) 237: rules 1 to 8; cases constructed (control-chart-constants-rules.json).
  it.each(published.rule_cases.cases)("signals rule $rule where the case says", (c) => {
    const rule = allRunRules[Number(c.rule) - 1]!;
    const want = Object.values(c.expected_signals)[0];
    expect(runRules(c.standardised_values, [rule]).map((s) => s.at)).toEqual(want);
  });

  it("knows eight in a row on one side, the zone rules' own", () => {
    const z = [0.1, 0.2, 0.3, 0.1, 0.4, 0.5, 0.1, 0.2, 0.3];
    expect(runRules(z, ["eightOneSide"]).map((s) => s.at)).toEqual([8, 9]);
  });

  it("does not count a value on the center as either side", () => {
    expect(runRules([1, 1, 1, 1, 0, 1, 1, 1, 1, 1], ["nineOneSide", "eightOneSide"])).toEqual([]);
  });

  it("looks for single values beyond three only, unless asked", () => {
    expect(defaultRunRules).toEqual(["beyondThree"]);
    expect(runRules([0, 3.5, 2.5, 2.5])).toEqual([{ rule: "beyondThree", at: 2 }]);
  });

  // e-Handbook 6.3.2: 91.75 values to the first false alarm of the zone rules. 4,000 runs: three standard errors are 4.
  it("alarms falsely once in some 92 values by the zone rules", () => {
    const normal = seededNormal(41);
    let sum = 0;
    const runs = 4000;
    for (let run = 0; run < runs; run += 1) sum += firstAlarm(normal);
    expect(
      Math.abs(sum / runs - published.average_run_length.zone_rules_in_control.published_from_memory),
    ).toBeLessThan(4.2);
  });
});

/** Number of the first value that meets a zone rule; only the last eight values matter. */
function firstAlarm(normal: () => number): number {
  const window: number[] = [];
  for (let count = 1; ; count += 1) {
    window.push(normal());
    if (window.length > 8) window.shift();
    if (runRules(window, zoneRules).some((s) => s.at === window.length)) return count;
  }
}
