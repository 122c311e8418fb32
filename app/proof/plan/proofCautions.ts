import { nextAct } from "./nextAct.ts";
import type { ProofState } from "./ProofState.ts";

/** Cautions, in the order they are shown; codes, so that a screen can put them into its language. */
export type ProofCaution = "standClear" | "noOverload" | "straightLoad" | "guardedRig" | "rulesFirst" | "nearCapacity";

export const cautionSentences: Readonly<Record<ProofCaution, string>> = Object.freeze({
  standClear:
    "Nobody under or beside the load: weights fall, and a stretched load train springs back when something gives.",
  noOverload: "Never load beyond the smallest capacity in the load train: gauge, adapter, reference and frame.",
  straightLoad: "Pull or push in line: a side load breaks short gauges and spoils the reading.",
  guardedRig:
    "Check screws, threads and hooks before each load, keep hands out of the gap, and load and unload slowly.",
  rulesFirst: "The manuals of rig and gauge, local rules and trained people come before anything said here.",
  nearCapacity: "The next load lies near the gauge's capacity: approach it slowly and stop at the target.",
});

/** What is shown before anything is loaded, and has to be confirmed. */
export const cautionsBefore = Object.freeze([
  "standClear",
  "noOverload",
  "straightLoad",
  "guardedRig",
  "rulesFirst",
] as const satisfies readonly ProofCaution[]);

/** What is shown with the act that comes next: all of it before the first load, a short word near the capacity. */
export function cautionsNow(state: ProofState): readonly ProofCaution[] {
  const next = nextAct(state);
  if (next.kind !== "act") return [];
  if (next.act.kind === "cautions") return cautionsBefore;
  if (next.act.kind === "mount") return [];
  return next.act.targetN >= 0.9 * state.gaugeCapacityN ? ["nearCapacity"] : [];
}
