import type { ProofReading } from "../data/ProofReading.ts";
import { nextAct, standingOf } from "./nextAct.ts";
import type { ProofEvent, ProofState, Taking } from "./ProofState.ts";
import { type ProofAct, proofActs } from "./proofActs.ts";

/** Why a taking or an act was not accepted. Nothing is lost by it: the act stands as it stood. */
export type StepRefusal =
  | "notNext"
  | "putDown"
  | "finished"
  | "notSteady"
  | "overload"
  | "linkLost"
  | "aboveCapacity"
  | "offTarget"
  | "notUnloaded"
  | "sameLoadTwice"
  | "reasonMissing"
  | "neverTaken"
  | "notPutDown";

export type Stepped =
  | { readonly kind: "accepted"; readonly state: ProofState }
  | { readonly kind: "refused"; readonly why: StepRefusal };

/** How far a load may lie from its target, and a rest from zero, as shares of target and capacity (common practice, no source). */
export const tolerance = Object.freeze({ load: 0.05, rest: 0.02 });

/** Marks the next act as done that is no reading: cautions read, gauge mounted, preload made. */
export function confirmAct(state: ProofState, index: number, at: string): Stepped {
  return onNext(state, index, (act) => (act.kind === "read" ? "notNext" : undefined), { kind: "done", act: index, at });
}

/** Takes the reading the next act asks for. A load above the gauge's capacity is refused whatever the plan says. */
export function takeReading(state: ProofState, index: number, taking: Taking, at: string): Stepped {
  return onNext(state, index, (act) => (act.kind === "read" ? spoiled(state, index, act, taking) : "notNext"), {
    kind: "taken",
    act: index,
    at,
    taking,
  });
}

/** Asks for an act again that was done, with a reason that stays on record. */
export function repeatAct(state: ProofState, index: number, reason: string, at: string): Stepped {
  if (reason.trim().length < 3) return { kind: "refused", why: "reasonMissing" };
  if (standingOf(state)[index]?.done !== true) return { kind: "refused", why: "neverTaken" };
  return accepted(state, { kind: "repeat", act: index, at, reason: reason.trim() });
}

/** Leaves the next act out for good, with a reason that stays on record. The cautions cannot be left out. */
export function skipAct(state: ProofState, index: number, reason: string, at: string): Stepped {
  if (reason.trim().length < 3) return { kind: "refused", why: "reasonMissing" };
  return onNext(state, index, (act) => (act.kind === "cautions" ? "notNext" : undefined), {
    kind: "skipped",
    act: index,
    at,
    reason: reason.trim(),
  });
}

/** Puts the proof down: by choice, or because a port was lost. What was taken stands. */
export function putDown(state: ProofState, reason: string, at: string): Stepped {
  const next = nextAct(state);
  if (next.kind !== "act") return { kind: "refused", why: next.kind };
  return accepted(state, { kind: "putDown", at, reason });
}

/** Takes the proof up again, where it stood or from the start of the run that was cut. */
export function takeUp(state: ProofState, from: "here" | "runStart", at: string): Stepped {
  if (nextAct(state).kind !== "putDown") return { kind: "refused", why: "notPutDown" };
  return accepted(state, { kind: "takenUp", at, from });
}

/** What has been read so far, for any of the methods; repeated readings count as last taken. Newtons. */
export function readingsSoFar(state: ProofState): readonly ProofReading[] {
  const standing = standingOf(state);
  return proofActs(state.plan).flatMap((act, i): ProofReading[] => {
    const taking = standing[i]!.taking;
    if (act.kind !== "read" || taking === undefined) return [];
    const { direction, run, step, positionDeg } = act;
    return [
      {
        reference: taking.referenceN,
        indication: taking.indicationN,
        direction,
        run,
        step: step?.toString(),
        positionDeg,
      },
    ];
  });
}

type ReadAct = Extract<ProofAct, { kind: "read" }>;

function onNext(
  state: ProofState,
  index: number,
  refusal: (act: ProofAct) => StepRefusal | undefined,
  event: ProofEvent,
): Stepped {
  const next = nextAct(state);
  if (next.kind !== "act") return { kind: "refused", why: next.kind };
  const why = next.index === index ? refusal(next.act) : "notNext";
  return why === undefined ? accepted(state, event) : { kind: "refused", why };
}

function spoiled(
  state: ProofState,
  index: number,
  { targetN, direction }: ReadAct,
  taking: Taking,
): StepRefusal | undefined {
  if (taking.spoiled !== undefined) return taking.spoiled;
  if (taking.referenceN > state.gaugeCapacityN * (1 + tolerance.rest)) return "aboveCapacity";
  if (!taking.steady) return "notSteady";
  if (targetN === 0)
    return Math.abs(taking.referenceN) > tolerance.rest * state.gaugeCapacityN ? "notUnloaded" : undefined;
  if (Math.abs(taking.referenceN - targetN) > tolerance.load * targetN) return "offTarget";
  const before = standingOf(state)[index - 1]?.taking;
  const same = before !== undefined && Math.abs(before.referenceN - taking.referenceN) <= 1e-3 * targetN;
  return same && (direction === "up" || direction === "down") ? "sameLoadTwice" : undefined;
}

const accepted = (state: ProofState, event: ProofEvent): Stepped => ({
  kind: "accepted",
  state: { ...state, events: [...state.events, event] },
});
