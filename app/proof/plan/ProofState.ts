import type { ProofPlan } from "./ProofPlan.ts";

/** What a take brought: means over the same stretch of time, in newtons, with the reference's own uncertainty. */
export type Taking = {
  readonly referenceN: number;
  readonly referenceStandardN: number;
  readonly indicationN: number;
  readonly n: number;
  /** Whether both stood still while it was taken. */
  readonly steady: boolean;
  /** Whether the gauge said overload, or its link was lost, while it was taken. */
  readonly spoiled?: "overload" | "linkLost" | undefined;
  /** As written, where it was typed and not read. */
  readonly referenceTyped?: string | undefined;
  readonly indicationTyped?: string | undefined;
  /** Mean of what the reference showed, its zero not taken off. */
  readonly referenceShownN?: number | undefined;
  /** Labels of the weights that hung. */
  readonly weights?: readonly string[] | undefined;
};

/** What happened, in its order; nothing is taken out again. Times are the caller's, UTC ISO 8601. */
export type ProofEvent =
  | { readonly kind: "done"; readonly act: number; readonly at: string }
  | { readonly kind: "taken"; readonly act: number; readonly at: string; readonly taking: Taking }
  | { readonly kind: "repeat"; readonly act: number; readonly at: string; readonly reason: string }
  /** Left out for good: it counts as done, with nothing taken. */
  | { readonly kind: "skipped"; readonly act: number; readonly at: string; readonly reason: string }
  | { readonly kind: "putDown"; readonly at: string; readonly reason: string }
  | { readonly kind: "takenUp"; readonly at: string; readonly from: "here" | "runStart" };

/** A proof in work: plain data, so that it can be stored after every event and taken up after a restart. */
export type ProofState = {
  readonly plan: ProofPlan;
  readonly gaugeCapacityN: number;
  readonly events: readonly ProofEvent[];
};
