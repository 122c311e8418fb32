import type { RunningProof } from "../../app/contract/proofViews.ts";
import { type ProofMethod, type ProofPlan, presetPlan } from "../../app/proof/plan/ProofPlan.ts";
import type { CoreInTemp } from "./coreInTemp.ts";

type Core = Pick<CoreInTemp, "call">;

/** A transducer of 50 kN that shows force as it is, good to 0.02 % (k = 2), due far ahead unless said otherwise. */
export async function saveTransducer(core: Core, dueOn = "2099-01-01", calibratedOn = "2020-01-01") {
  const uncertainty = [
    { atN: 1_000, relative: 1e-4 },
    { atN: 50_000, relative: 1e-4 },
  ];
  const { reference } = await core.call("references.save", {
    name: "Reference 50 kN",
    kind: "transducer",
    transducer: {
      curve: { version: 1, coefficients: [0, 1], fromN: 0, toN: 50_000, uncertainty },
      capacityN: 50_000,
      class: "00",
      calibratedOn,
      dueOn,
      driftPerYear: 0,
    },
    state: "inUse",
  });
  return reference.referenceId;
}

/** Loads typed by somebody, known to 0.01 % (k = 1). */
export async function saveTyped(core: Core, more: { dueOn?: string; capacityN?: number } = {}) {
  const { reference } = await core.call("references.save", {
    name: "Proving ring readings",
    kind: "typed",
    typed: { relative: 1e-4, standardN: 0, ...more },
    state: "inUse",
  });
  return reference.referenceId;
}

/** A method's preset without its waits. */
export function quickPlan(method: ProofMethod, capacityN: number, change: Partial<ProofPlan> = {}) {
  const plan = presetPlan(method, capacityN);
  return {
    ...plan,
    dwellS: 0,
    restS: 0,
    readS: 0.3,
    ...change,
    loadsN: [...(change.loadsN ?? plan.loadsN)],
    runs: [...(change.runs ?? plan.runs)],
  };
}

/** What a gauge shows under a load: `gain` times it, a zero, and a little that differs from run to run. */
export type Shows = (forceN: number, run: string) => number;

/** Types a proof through from where it stands, to its end or until `stop` says so. */
export async function typeThrough(
  core: Core,
  from: RunningProof,
  shows: Shows,
  stop: (proof: RunningProof) => boolean = () => false,
): Promise<RunningProof> {
  let proof = from;
  while (proof.next.kind === "act" && !stop(proof)) {
    const { index, act } = proof.next;
    const { proofId } = proof;
    if (act.kind !== "read") {
      proof = await core.call("proof.confirm", { proofId, index });
      continue;
    }
    const forceN = proof.hang?.forceN ?? act.targetN;
    proof = await core.call("proof.type", {
      proofId,
      index,
      indication: `${shows(forceN, act.run)} N`,
      ...(proof.referenceRead === "weights" || act.targetN === 0 ? {} : { reference: `${forceN} N` }),
    });
  }
  return proof;
}

/** A hanger and weights of steel, masses as their certificates state them; figures may be spoilt. */
export function aRig(change: { massKg?: number; densityKgM3?: number; latitudeDeg?: number; labels?: string[] } = {}) {
  const { massKg = 100, densityKgM3 = 7_950, latitudeDeg = 48, labels = ["H", "A", "B", "C", "D", "E"] } = change;
  const weights = labels.map((label) => ({
    label,
    massKg,
    massKind: "conventional" as const,
    massStandardKg: 0.002,
    densityKgM3,
    densityStandardKgM3: 30,
  }));
  return { weights, gravity: { from: "place" as const, latitudeDeg, heightM: 300 } };
}
