import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { RunningProof } from "../../../app/contract/proofViews.ts";
import type { Failure } from "../../../app/contract/result.ts";
import { type CoreInTemp, coreInTemp, smallWorks } from "../../support/coreInTemp.ts";
import { aRig, quickPlan, saveTransducer, saveTyped, typeThrough } from "../../support/proofWorks.ts";

const shows = (forceN: number, run: string) => forceN * (1.001 + 2e-5 * Number(run)) + 2;

describe("what cannot be right in a proof gets a clear answer, and the work so far is kept", () => {
  let core: CoreInTemp;
  let gaugeId: string;
  beforeEach(async () => {
    core = await coreInTemp();
    ({ gaugeId } = await smallWorks(core));
  });
  afterEach(() => core.close());

  const refusal = async (call: Promise<unknown>): Promise<Failure> =>
    call.then(
      () => {
        throw new Error("it was not refused");
      },
      (cause: { failure: Failure }) => cause.failure,
    );
  const start = async (
    change: Parameters<typeof quickPlan>[2] = {},
    method: Parameters<typeof quickPlan>[0] = "iso376",
  ) =>
    core.call("proof.start", {
      gaugeId,
      referenceId: await saveTyped(core),
      as: "found",
      plan: quickPlan(method, 30_000, change),
      gaugeRead: "typed",
      choices: { resolutionN: 1 },
    });
  const type = (proof: RunningProof, indication: string, reference: string) =>
    core.call("proof.type", { proofId: proof.proofId, index: indexOf(proof), indication, reference });
  const indexOf = ({ next }: RunningProof) => (next.kind === "act" ? next.index : -1);
  /** Stands before the second rising load, 6 kN. */
  const atSecondLoad = async () =>
    typeThrough(
      core,
      await start(),
      shows,
      (p) => p.next.kind === "act" && p.next.act.kind === "read" && p.next.act.step === 2,
    );
  const takenOf = (proof: RunningProof) => proof.acts.filter((a) => a.taking !== undefined).length;

  it("refuses a mass of 0, a latitude of 91, and figures no weight or place has, by the field", async () => {
    const save = (rig: Partial<Parameters<typeof aRig>[0]>) =>
      refusal(core.call("references.save", { name: "Rig", kind: "weights", weights: aRig(rig), state: "inUse" }));
    expect(await save({ massKg: 0 })).toMatchObject({ code: "invalid", key: "reference.mass", field: "massKg" });
    expect(await save({ latitudeDeg: 91 })).toMatchObject({
      key: "reference.latitude",
      message: expect.stringContaining("got 91"),
    });
    expect(await save({ densityKgM3: 80 })).toMatchObject({ key: "reference.density" });
    expect(await save({ labels: ["A", "A"] })).toMatchObject({ key: "reference.labelTwice" });
    expect(await core.call("references.list")).toEqual([]);
  });

  it("refuses a plan with loads out of order, twice, or above the gauge's capacity, before anything is loaded", async () => {
    const refused = async (loadsN: number[]) => (await refusal(start({ loadsN }))).key;
    expect(await refused([3_000, 9_000, 6_000])).toBe("plan.loadsNotRising");
    expect(await refused([3_000, 3_000, 6_000])).toBe("plan.sameLoadTwice");
    expect(await refused([3_000, 33_000])).toBe("plan.aboveGaugeCapacity");
    const rig = await core.call("references.save", { name: "Rig", kind: "weights", weights: aRig(), state: "inUse" });
    const onRig = (loadsN: number[]) =>
      core.call("proof.start", {
        gaugeId,
        referenceId: rig.reference.referenceId,
        as: "found",
        plan: quickPlan("working", 30_000, { loadsN }),
        gaugeRead: "typed",
      });
    expect((await refusal(onRig([1_000, 2_500]))).key).toBe("plan.notOnRig"); // six weights of 0.98 kN each
    expect((await refusal(onRig([6_000, 9_000]))).key).toBe("plan.notOnRig");
    expect((await core.call("proof.state")).proof).toBeUndefined();
    const kept = await core.call("plans.save", { ...quickPlan("iso376", 30_000), name: "Ours", state: "inUse" });
    expect(await core.call("plans.list")).toEqual([kept]);
    expect(await refusal(core.call("plans.save", { ...kept, loadsN: [2, 1] }))).toMatchObject({
      key: "plan.loadsNotRising",
    });
    const { planId: _kept, ...twin } = kept;
    expect(await refusal(core.call("plans.save", { ...twin, name: " OURS" }))).toMatchObject({ key: "plan.nameTaken" });
    const changed = await core.call("plans.save", { ...kept, preloads: 1 }); // its own name is not another's
    await core.call("plans.save", { ...changed, state: "retired" });
    const next = await core.call("plans.save", { ...twin, preloads: 2 });
    expect(await core.call("plans.list")).toEqual([{ ...changed, state: "retired" }, next]);
    expect(await refusal(core.call("plans.save", changed))).toMatchObject({ key: "plan.nameTaken" });
  });

  it("refuses a load above capacity, off its target, and the same load twice, and keeps what was taken", async () => {
    const proof = await atSecondLoad();
    expect(await refusal(type(proof, "31.5 kN", "31.5 kN"))).toMatchObject({
      code: "refused",
      key: "proof.aboveCapacity",
    });
    expect(await refusal(type(proof, "7 kN", "7 kN"))).toMatchObject({ key: "proof.offTarget" });
    expect(await refusal(type(proof, "3 kN", "3 kN"))).toMatchObject({ key: "proof.offTarget" });
    const now = (await core.call("proof.state")).proof!;
    expect([takenOf(now), indexOf(now)]).toEqual([takenOf(proof), indexOf(proof)]);
    const near = await start2(core, gaugeId);
    expect(await refusal(type(near, "29.0 kN", "28.99 kN"))).toMatchObject({ key: "proof.sameLoadTwice" });
  });

  it("refuses a torque, a mass and a text, and reads different units of gauge and reference", async () => {
    const proof = await atSecondLoad();
    expect(await refusal(type(proof, "60 Nm", "6 kN"))).toMatchObject({
      code: "invalid",
      key: "force.torque",
      field: "indication",
    });
    expect(await refusal(type(proof, "6 kN", "611.8 kg"))).toMatchObject({ key: "force.mass", field: "reference" });
    expect(await refusal(type(proof, "much", "6 kN"))).toMatchObject({ key: "force.unreadable" });
    const next = await type(proof, "1350 lbf", "6 kN");
    expect(next.acts[indexOf(proof)]?.taking).toMatchObject({ referenceN: 6_000, indicationTyped: "1350 lbf" });
    // 1 lbf is exactly 4.4482216152605 N (NIST SP 811, appendix B).
    expect(next.acts[indexOf(proof)]?.taking?.indicationN).toBeCloseTo(1350 * 4.4482216152605, 9);
  });

  it("says that the reference is past due, goes on, and files it with the proof", async () => {
    const referenceId = await saveTransducer(core, "2021-01-01");
    const plan = quickPlan("working", 30_000);
    const begun = await core.call("proof.start", {
      gaugeId,
      referenceId,
      as: "found",
      plan,
      gaugeRead: "typed",
      referenceRead: "typed",
    });
    expect(begun.problems).toContainEqual({ code: "referencePastDue", stops: false, about: "2021-01-01" });
    expect((await core.call("references.list"))[0]?.dueState).toBe("pastDue");
    const done = await typeThrough(core, begun, shows);
    const { proof } = await core.call("proof.file", { proofId: done.proofId });
    expect(proof.problems).toContainEqual({ code: "referencePastDue", about: "2021-01-01" });
  });

  it("gives no class where runs are missing, and still shows the errors", async () => {
    const runs = [{ run: "1", positionDeg: 0, falling: true }];
    const begun = await start({ runs, creep: false });
    expect(begun.problems.map((p) => p.code)).toEqual(expect.arrayContaining(["tooFewRuns", "tooFewPositions"]));
    const done = await typeThrough(core, begun, shows);
    const outcome = await core.call("proof.result", { proofId: done.proofId });
    expect(outcome.judged).toBe("cannotTell");
    const { proof, row } = await core.call("proof.file", { proofId: done.proofId });
    expect(proof.result?.class).toBeNull();
    expect(proof.result?.missing.map((m) => m.code)).toEqual(expect.arrayContaining(["needsPositions", "needsRepeat"]));
    expect(proof.result?.steps).toHaveLength(10);
    expect(proof.result?.steps[0]?.fc).not.toBeNull();
    expect(row.curveTaken).toBe(false);
    expect((await core.call("gauges.list"))[0]?.gauge.curve).toBeUndefined();
  });

  it("gives no class where a zero return was left out, which only goes with a reason", async () => {
    let proof = await start();
    const { proofId } = proof;
    for (;;) {
      proof = await typeThrough(
        core,
        proof,
        shows,
        (p) => p.next.kind === "act" && p.next.act.kind === "read" && p.next.act.direction === "zeroAfter",
      );
      if (proof.next.kind !== "act") break;
      expect((await refusal(core.call("proof.skip", { proofId, index: indexOf(proof), reason: " " }))).message).toMatch(
        /reason/,
      );
      proof = await core.call("proof.skip", { proofId, index: indexOf(proof), reason: "shift ended" });
    }
    const { proof: filed } = await core.call("proof.file", { proofId });
    expect(filed.result?.missing).toContainEqual({ code: "needsZeroReturn" });
    expect(filed.problems.filter((p) => p.code === "skipped")).toHaveLength(4);
  });

  it("takes an act again only with a reason, which is filed beside the reading it replaced", async () => {
    const proof = await atSecondLoad();
    const { proofId } = proof;
    const index = indexOf(proof) - 1;
    expect(await refusal(core.call("proof.repeat", { proofId, index: index + 5, reason: "touched" }))).toMatchObject({
      key: "proof.neverTaken",
    });
    const again = await core.call("proof.repeat", { proofId, index, reason: "cable touched" });
    expect(again.acts[index]).toMatchObject({ standing: "next", repeats: 1, lastReason: "cable touched" });
    await type(again, "3.004 kN", "3 kN");
    const { proof: filed } = await core.call("proof.file", { proofId });
    const both = filed.takings.filter((t) => t.act === index);
    expect(both.map((t) => t.replaced?.reason)).toEqual(["cable touched", undefined]);
    expect(both[1]).toMatchObject({ indicationN: 3_004, indicationTyped: "3.004 kN" });
  });

  it("knows one proof at a time, by its id, and files it once", async () => {
    const proof = await atSecondLoad();
    expect(await refusal(start())).toMatchObject({ code: "conflict", key: "proof.another" });
    expect(await refusal(core.call("proof.confirm", { proofId: gaugeId, index: 0 }))).toMatchObject({
      key: "proof.gone",
    });
    const first = await core.call("proof.file", { proofId: proof.proofId });
    const twice = await core.call("proof.file", { proofId: proof.proofId });
    expect(twice.hash).toBe(first.hash);
    expect((await core.call("proofs.list", { gaugeId })).rows).toHaveLength(1);
    const other = await start();
    expect(await refusal(core.call("proof.file", { proofId: other.proofId }))).toMatchObject({
      key: "proof.nothingTaken",
    });
    await core.call("proof.discard", { proofId: other.proofId });
    expect((await core.call("proof.state")).proof).toBeUndefined();
  });
});

/** A proof of two near loads, before the second, after the one in work was thrown away. */
async function start2(core: CoreInTemp, gaugeId: string): Promise<RunningProof> {
  const { proof } = await core.call("proof.state");
  await core.call("proof.discard", { proofId: proof!.proofId });
  const referenceId = await saveTyped(core);
  const plan = quickPlan("working", 30_000, { loadsN: [28_990, 30_000] });
  const begun = await core.call("proof.start", { gaugeId, referenceId, as: "found", plan, gaugeRead: "typed" });
  return typeThrough(
    core,
    begun,
    shows,
    (p) => p.next.kind === "act" && p.next.act.kind === "read" && p.next.act.step === 2,
  );
}
