import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import type { ProofWatch, RunningProof } from "../../../app/contract/proofViews.ts";
import { type Simulator, startSimulator } from "../../../main/link/simulated.ts";
import { type CoreInTemp, coreInTemp, fileTyped, smallWorks } from "../../support/coreInTemp.ts";
import { quickPlan, saveTransducer } from "../../support/proofWorks.ts";

/** The gauge shows 0.3 % too much at 100 readings a second; its reference shows newtons at 25, each up to 40 ms late. */
const GAIN = 1.003;
const args = [
  ...["--rate", "100", "--gain", String(GAIN), "--noise", "0.4 N", "--decimals", "4", "--zero", "35 N"],
  ...["--reference", "0", "--reference-rate", "25", "--reference-jitter", "0.04"],
];

/** What the proof said last, for a test that waits in vain. */
let said: () => unknown = () => undefined;

const until = async <T>(what: string, look: () => Promise<T | undefined>, ms = 20_000): Promise<T> => {
  const end = Date.now() + ms;
  for (;;) {
    const found = await look();
    if (found !== undefined) return found;
    if (Date.now() > end) throw new Error(`waited too long for ${what}: ${JSON.stringify(said())}`);
    await new Promise((resolve) => setTimeout(resolve, 40));
  }
};

describe("a proof read live at two ports", () => {
  const folder = mkdtempSync(join(tmpdir(), "holdfast-proof-"));
  let sim: Simulator;
  let core: CoreInTemp;
  let gaugeId: string;
  let spindleId: string;
  let proofId: string;

  const state = async (): Promise<RunningProof> => (await core.call("proof.state")).proof!;
  const watch = () => core.pushes.findLast((p) => p.event === "proof.watched")?.data as ProofWatch | undefined;
  said = () => watch();
  const open = async () => {
    await core.call("link.open", { source: { kind: "tcp", ...sim.address }, gaugeId });
    await core.call("proof.openReference", { proofId, source: { kind: "tcp", ...sim.reference! } });
    await until("both links", async () => {
      const { referenceLink } = await state();
      return (await core.call("state.snapshot")).link.state === "open" && referenceLink.state === "open"
        ? true
        : undefined;
    });
  };
  /** Leads it on, loading the rig as the plan asks, until `enough` says so. */
  const lead = (enough: (proof: RunningProof) => boolean) => {
    let loadedN: number | undefined;
    return until(
      "the plan's end",
      async () => {
        const proof = await state();
        if (enough(proof)) return proof;
        if (proof.next.kind !== "act") return undefined;
        const { index, act } = proof.next;
        if (act.kind !== "read") await core.call("proof.confirm", { proofId, index });
        else if (act.targetN !== loadedN) {
          loadedN = act.targetN;
          await sim.command(loadedN === 0 ? "unload" : `load ${loadedN * (1 + 0.002 * ((index % 3) - 1))}`);
        }
        return undefined;
      },
      120_000,
    );
  };

  beforeAll(async () => {
    sim = await startSimulator({ args });
    core = await coreInTemp({ folder });
    ({ gaugeId, spindleId } = await smallWorks(core));
    const referenceId = await saveTransducer(core);
    const loadsN = [4_900, 15_000, 25_000];
    const plan = quickPlan("iso376", 30_000, { loadsN, preloads: 1, creep: false, readS: 0.3 });
    const begun = await core.call("proof.start", {
      gaugeId,
      referenceId,
      as: "found",
      plan,
      gaugeRead: "live",
      auto: true,
    });
    proofId = begun.proofId;
  }, 30_000);
  afterAll(async () => {
    await core.close();
    await sim.close();
    rmSync(folder, { recursive: true, force: true });
  });

  it("refuses a load above the gauge's capacity and a moving one, and says so before it is asked", async () => {
    await open();
    await lead((p) => p.next.kind === "act" && p.next.act.kind === "read" && p.next.act.targetN === 4_900);
    await core.call("proof.describe", { proofId, auto: false });
    await sim.command("load 33000");
    await until("the warning", async () =>
      watch()?.why === "aboveCapacity" || watch()?.why === "overload" ? true : undefined,
    );
    const { next } = await state();
    const index = next.kind === "act" ? next.index : -1;
    await expect(core.call("proof.take", { proofId, index })).rejects.toThrow(/capacity|overload/);
    await sim.command("load 4900");
    await expect(core.call("proof.take", { proofId, index })).rejects.toThrow(/refused/);
    await core.call("proof.describe", { proofId, auto: true });
    await until("the load", async () => ((await state()).acts[index]?.standing === "done" ? true : undefined));
  }, 60_000);

  it("keeps what was taken when a port is lost and over a restart, and goes on from there", async () => {
    await lead((p) => p.next.kind === "act" && p.next.act.kind === "read" && p.next.act.targetN === 15_000);
    await sim.command("unplug");
    const lost = await until("the loss", async () => ((await state()).next.kind === "putDown" ? state() : undefined));
    const taken = lost.acts.filter((a) => a.taking !== undefined).length;
    expect(lost.next).toMatchObject({ kind: "putDown", reason: "linkLost" });
    await sim.command("plug");
    await core.close();
    core = await coreInTemp({ folder });
    const again = await state();
    expect(again.next.kind).toBe("putDown");
    expect(again.acts.filter((a) => a.taking !== undefined).length).toBe(taken);
    await open();
    await core.call("proof.resume", { proofId, from: "here" });
    expect((await state()).next.kind).toBe("act");
  }, 60_000);

  it("is led to its end, filed, and corrects the next check", async () => {
    const done = await lead((p) => p.next.kind === "finished");
    expect((await core.call("state.snapshot")).draft.cycles).toEqual([]); // loads of a rig are no clampings
    const { proof } = await core.call("proof.file", { proofId: done.proofId });
    expect(proof.pauses).toMatchObject([{ reason: "linkLost", from: "here" }]);
    expect(proof.offset?.correlation).toBeGreaterThan(0.9);
    // What the simulated gauge truly is, from outside the program: indication = gain x force.
    for (const step of proof.result!.steps) expect(Math.abs(step.netN / step.referenceN / GAIN - 1)).toBeLessThan(1e-4);
    expect(proof.result!.class).not.toBeNull();
    expect(proof.judged).toBe("good");
    await core.call("series.tag", { seriesId: (await core.call("state.snapshot")).draft.seriesId, gaugeId });
    const { row } = await fileTyped(core, spindleId, `${18 * GAIN} kN`);
    expect(row.valueN! / 18_000 - 1).toBeCloseTo(0, 4);
    expect((await core.call("proof.state")).proof).toBeUndefined();
  }, 150_000);
});
