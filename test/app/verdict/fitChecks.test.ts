import { describe, expect, it } from "vitest";
import { type FitFacts, fitChecks } from "../../../app/verdict/fitChecks.ts";

const sound: FitFacts = {
  spindle: { taper: "HSK-A63", limits: { minimumN: 15_000, nominalN: 18_000, maximumN: 22_000 } },
  adapter: { taper: "hsk a 63", assumed: false, dueOn: "2026-03-01" },
  gauge: { capacityN: 30_000, resolutionN: 10, curve: {}, dueOn: "2026-03-01" },
  today: "2026-03-01",
};
const found = (over: Partial<FitFacts>) =>
  fitChecks({ ...sound, ...over }).map(({ code, weight, about }) => `${code} ${weight} ${about}`.trim());
const gauge = (over: Partial<NonNullable<FitFacts["gauge"]>>) => ({ gauge: { ...sound.gauge!, ...over } });
const adapter = (over: Partial<NonNullable<FitFacts["adapter"]>>) => ({ adapter: { ...sound.adapter!, ...over } });

describe("fitChecks", () => {
  it("has nothing to say of tools that suit, on the day they are due", () => {
    expect(found({})).toEqual([]);
  });

  it("says nothing of what is not known", () => {
    expect(fitChecks({ today: "2026-03-01" })).toEqual([]);
    expect(found({ spindle: { taper: "", limits: {} } })).toEqual([]);
  });

  it("blocks a wrong taper, and asks where only the form differs", () => {
    expect(found(adapter({ taper: "HSK-A50" }))).toEqual(["taperMismatch block HSK-A50"]);
    expect(found(adapter({ taper: "HSK-E63" }))).toEqual(["taperUnsure ask HSK-E63"]);
  });

  it("blocks a gauge that the maximum, the nominal or the last force would overload", () => {
    expect(found(gauge({ capacityN: 21_999 }))).toEqual(["overCapacity block 22000"]);
    expect(found(gauge({ capacityN: 22_000 }))).toEqual([]);
    expect(found({ lastN: 30_001 })).toEqual(["overCapacity block 30001"]);
    const nominal = { taper: "HSK-A63", limits: { nominalN: 35_000 } };
    expect(found({ spindle: nominal })).toEqual(["overCapacity block 35000"]);
  });

  it("asks below 10 % of the gauge's capacity, the border being enough", () => {
    expect(found(gauge({ capacityN: 180_000 }))).toEqual([]);
    expect(found(gauge({ capacityN: 180_001 }))).toEqual(["lowInRange ask 18000"]);
    expect(found({ ...gauge({ capacityN: 180_001 }), lastN: 19_000 })).toEqual([]);
  });

  it("asks when fewer than ten steps lie between nominal and minimum", () => {
    expect(found(gauge({ resolutionN: 300 }))).toEqual([]);
    expect(found(gauge({ resolutionN: 301 }))).toEqual(["coarseResolution ask 9"]);
    // 0.3 in steps of 0.03 is ten steps on paper, 9.999… in binary
    const fine = { taper: "HSK-A63", limits: { minimumN: 1, nominalN: 1.3 } };
    expect(found({ spindle: fine, ...gauge({ capacityN: 3, resolutionN: 0.03 }) })).toEqual([]);
  });

  it("asks from the day after a proof was due", () => {
    expect(found({ today: "2026-03-02" })).toEqual(["proofPastDue ask 2026-03-01", "adapterPastDue ask 2026-03-01"]);
  });

  it("tells of a gauge without a proof and an adapter without a calibration", () => {
    expect(found({ ...gauge({ curve: undefined }), ...adapter({ assumed: true }) })).toEqual([
      "gaugeUnproved tell",
      "adapterUncalibrated tell",
    ]);
  });

  it("lets nothing that blocks be a matter of asking", () => {
    for (const warning of fitChecks({ ...sound, ...adapter({ taper: "SK50" }), lastN: 50_000 }))
      expect(warning.weight).toBe("block");
  });
});
