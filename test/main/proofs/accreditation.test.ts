import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { type CoreInTemp, coreInTemp, smallWorks } from "../../support/coreInTemp.ts";
import { quickPlan, saveTyped } from "../../support/proofWorks.ts";

describe("the laboratory's accreditation text", () => {
  let core: CoreInTemp;
  let gaugeId: string;
  let referenceId: string;
  beforeAll(async () => {
    core = await coreInTemp();
    ({ gaugeId } = await smallWorks(core));
    referenceId = await saveTyped(core);
  });
  afterAll(() => core.close());

  const begun = async (accreditation?: string | null) => {
    const { proofId, about } = await core.call("proof.start", {
      gaugeId,
      referenceId,
      as: "found",
      plan: quickPlan("working", 30_000),
      gaugeRead: "typed",
      ...(accreditation === undefined ? {} : { accreditation }),
    });
    await core.call("proof.discard", { proofId });
    return about.accreditation;
  };

  it("is none until somebody enters it, the works' own from then on, and for one proof what that proof says", async () => {
    expect(await begun()).toBeUndefined();
    const { works } = await core.call("state.snapshot");
    await core.call("works.save", { ...works, accreditation: "Accredited for force, no. 12 (invented)" });
    expect(await begun()).toBe("Accredited for force, no. 12 (invented)");
    expect(await begun("for this one alone")).toBe("for this one alone");
    expect(await begun(null)).toBeUndefined();
  });
});
