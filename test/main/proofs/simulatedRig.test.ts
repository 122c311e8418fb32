import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ProofWatch } from "../../../app/contract/proofViews.ts";
import { type CoreInTemp, coreInTemp, smallWorks } from "../../support/coreInTemp.ts";
import { quickPlan, saveTransducer } from "../../support/proofWorks.ts";

describe("the simulated rig", () => {
  let core: CoreInTemp;
  beforeAll(async () => {
    core = await coreInTemp();
  });
  afterAll(() => core.close());

  it("shows gauge and reference under the same load, each in its own unit, and both at rest", async () => {
    const { gaugeId } = await smallWorks(core);
    const referenceId = await saveTransducer(core);
    const plan = quickPlan("working", 30_000, { preloads: 0 });
    const { proofId } = await core.call("proof.start", { gaugeId, referenceId, as: "found", plan, gaugeRead: "live" });
    await core.call("link.open", { source: { kind: "simulated" }, gaugeId });
    await core.call("proof.openReference", { proofId, source: { kind: "simulated" } });
    for (const index of [0, 1]) await core.call("proof.confirm", { proofId, index }); // cautions, mounting
    await core.call("simulated.command", { command: "load", forceN: 6_000 });
    const watch = () => core.pushes.findLast((p) => p.event === "proof.watched")?.data as ProofWatch | undefined;
    await expect
      .poll(() => (watch()?.gauge?.steady === true && watch()?.reference?.steady === true ? watch()?.why : undefined), {
        timeout: 15_000,
      })
      .toBe("notUnloaded"); // the zero is asked for
    const { gauge, reference } = watch()!;
    expect(gauge!.forceN! / 6_000).toBeCloseTo(1, 2);
    expect(reference!.forceN! / 6_000).toBeCloseTo(1, 2);
    const view = (await core.call("proof.state")).proof!;
    expect([view.referenceLink.unit, (await core.call("state.snapshot")).link.unit]).toEqual(["N", "kN"]);
    await core.call("simulated.command", { command: "unload" });
    await expect.poll(() => watch()?.why, { timeout: 15_000 }).toBeUndefined();
    const taken = await core.call("proof.take", { proofId, index: 2 });
    expect(taken.acts[2]).toMatchObject({ standing: "done", taking: { steady: true } });
    await core.call("proof.discard", { proofId });
  }, 60_000);
});
