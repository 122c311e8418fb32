import { describe, expect, it } from "vitest";
import { type ReferenceTransducer, referenceForce } from "../../../../app/proof/reference/ReferenceTransducer.ts";

const reference: ReferenceTransducer = {
  curve: {
    version: 1,
    coefficients: [2, 1.001],
    fromN: 1000,
    toN: 50_000,
    uncertainty: [{ atN: 1000, relative: 1e-4 }],
  },
  capacityN: 50_000,
  calibratedOn: "2026-01-01",
  dueOn: "2028-01-01",
  driftPerYear: 3e-4,
};

describe("referenceForce", () => {
  it("goes by the transducer's own curve, its uncertainty and the drift since its calibration", () => {
    const got = referenceForce(reference, 20_000, "2027-01-01");
    expect(got.forceN).toBeCloseTo(20_022, 9);
    expect(got.standardN / got.forceN).toBeCloseTo(Math.hypot(1e-4, (3e-4 * (365 / 365.25)) / Math.sqrt(3)), 12);
    expect(got.problems).toEqual([]);
  });

  it.each([
    ["past due, from the day after", 20_000, "2028-01-02", ["pastDue"]],
    ["not past due on the day itself", 20_000, "2028-01-01", []],
    ["below its range", 500, "2026-06-01", ["belowItsRange"]],
    ["above range and capacity", 60_000, "2026-06-01", ["aboveItsRange", "aboveCapacity"]],
  ])("says it is %s", (_, netN, today, problems) => {
    expect(referenceForce(reference, netN, today).problems).toEqual(problems);
  });

  it("says when its uncertainty is not known", () => {
    const bare = { ...reference, curve: { ...reference.curve, uncertainty: [] } };
    expect(referenceForce(bare, 20_000, "2026-06-01").problems).toEqual(["uncertaintyUnknown"]);
  });
});
