import { describe, expect, it } from "vitest";
import { spindle as spindleSchema, works as worksSchema } from "../../../app/ledger/register.ts";
import { worksDraftOf, worksFaults, worksOf } from "../../../renderer/screens/setup/worksDraft.ts";
import { draftOf, faultsOf, spindleOf } from "../../../renderer/screens/spindleForm/spindleDraft.ts";
import { fakeSpindles, fakeWorks } from "../../support/fake/fakeRegister.ts";

const mill = fakeSpindles[0]!;

describe("the form of a spindle", () => {
  it("gives back what it was filled from", () => {
    const saved = spindleOf(draftOf(mill, "kN"), mill, "kN");
    expect(spindleSchema.parse(saved)).toEqual(mill);
  });

  it("takes limits in the unit that was picked, with decimal comma", () => {
    const draft = { ...draftOf(undefined, "kN"), name: "New", unit: "daN" as const };
    const limits = { minimum: "1440", warning: "1530,5", nominal: "1800", maximum: "" };
    const saved = spindleOf({ ...draft, limits }, undefined, "kN");
    expect(saved.limits).toEqual({ minimumN: 14_400, warningN: 15_305, nominalN: 18_000 });
    expect(saved.unitShown).toBe("daN");
    expect(Object.hasOwn(saved, "spindleId")).toBe(false);
  });

  it.each([
    [{ minimum: "15", warning: "14", nominal: "", maximum: "" }, "warning", "order"],
    [{ minimum: "x", warning: "", nominal: "", maximum: "" }, "minimum", "noNumber"],
    [{ minimum: "0", warning: "", nominal: "", maximum: "" }, "minimum", "aboveZero"],
    [{ minimum: "-3", warning: "", nominal: "", maximum: "" }, "minimum", "aboveZero"],
  ])("names the field that cannot be right: %j", (limits, field, what) => {
    expect(faultsOf({ ...draftOf(mill, "kN"), limits })).toEqual([{ field, what }]);
  });

  it("wants a name, and refuses to be sent without", () => {
    const nameless = { ...draftOf(mill, "kN"), name: "  " };
    expect(faultsOf(nameless)).toEqual([{ field: "name", what: "needed" }]);
    expect(() => spindleOf(nameless, mill, "kN")).toThrow(RangeError);
  });
});

describe("the form of the works", () => {
  it("gives back what it was filled from", () => {
    expect(worksSchema.parse(worksOf(worksDraftOf(fakeWorks), fakeWorks))).toEqual(fakeWorks);
  });

  it("turns percent into fractions and leaves an empty figure to its default", () => {
    const draft = { ...worksDraftOf(fakeWorks), rule: "probability" as const, threshold: "97,5", coverageFactor: "" };
    expect(worksOf(draft, fakeWorks).rule).toEqual({ rule: "probability", threshold: 0.975 });
  });

  it("keeps the laboratory's accreditation text, and drops one that was wiped out", () => {
    const saved = worksSchema.parse(
      worksOf({ ...worksDraftOf(fakeWorks), accreditation: " no. 12 (invented) " }, fakeWorks),
    );
    expect(saved.accreditation).toBe("no. 12 (invented)");
    expect(worksDraftOf(saved).accreditation).toBe("no. 12 (invented)");
    expect(worksSchema.parse(worksOf({ ...worksDraftOf(saved), accreditation: "  " }, saved))).not.toHaveProperty(
      "accreditation",
    );
  });

  it("keeps what is taken to be so as shares, and only what somebody has entered", () => {
    const draft = { ...worksDraftOf(fakeWorks), misalignment: "0,3", unprovedShare: "1" };
    const saved = worksSchema.parse(worksOf(draft, fakeWorks));
    expect(saved.assumptions).toEqual({ misalignment: 0.003, unprovedShare: 0.01 });
    expect(worksDraftOf(saved)).toMatchObject({ misalignment: "0.3", unprovedShare: "1", perKelvin: "" });
  });

  it.each([
    [{ perKelvin: "0" }, "perKelvin", "range"],
    [{ timeZone: "Nowhere/Here" }, "timeZone", "zone"],
    [{ caution: "25" }, "act", "order"],
    [{ intervalDays: "0" }, "intervalDays", "range"],
    [{ intervalDays: "1.5" }, "intervalDays", "range"],
    [{ coverageFactor: "9" }, "coverageFactor", "range"],
    [{ name: "" }, "name", "needed"],
  ])("names the field that cannot be right: %j", (change, field, what) => {
    expect(worksFaults({ ...worksDraftOf(fakeWorks), ...change })).toEqual([{ field, what }]);
  });
});
