import type { ProofState, Taking } from "./ProofState.ts";
import { type ProofAct, proofActs } from "./proofActs.ts";

export type NextAct =
  | { readonly kind: "act"; readonly index: number; readonly act: ProofAct; readonly remaining: number }
  /** Somebody put it down, or a link was lost: it waits to be taken up. */
  | { readonly kind: "putDown"; readonly reason: string; readonly remaining: number }
  | { readonly kind: "finished" };

/** What stands of each act: undefined until it is done, and again when it is to be repeated. */
export type Standing = { readonly done: boolean; readonly taking: Taking | undefined };

/** The next thing to do. The state alone decides, so a restart changes nothing. */
export function nextAct(state: ProofState): NextAct {
  const acts = proofActs(state.plan);
  const standing = standingOf(state);
  const open = acts.flatMap((act, index) => (standing[index]!.done ? [] : [{ act, index }]));
  const last = state.events.findLast((e) => e.kind === "putDown" || e.kind === "takenUp");
  if (last?.kind === "putDown" && open.length > 0)
    return { kind: "putDown", reason: last.reason, remaining: open.length };
  const first = open[0];
  return first === undefined ? { kind: "finished" } : { kind: "act", ...first, remaining: open.length };
}

/** The acts of the plan with what stands of each, after all events. */
export function standingOf(state: ProofState): readonly Standing[] {
  const acts = proofActs(state.plan);
  const standing: Standing[] = acts.map(() => ({ done: false, taking: undefined }));
  for (const event of state.events) {
    if (event.kind === "done" || event.kind === "skipped") standing[event.act] = { done: true, taking: undefined };
    if (event.kind === "taken") standing[event.act] = { done: true, taking: event.taking };
    if (event.kind === "repeat") standing[event.act] = { done: false, taking: undefined };
    if (event.kind === "takenUp" && event.from === "runStart") {
      const run = runOf(acts[standing.findIndex((s) => !s.done)]);
      for (const [i, act] of acts.entries())
        if (run !== undefined && runOf(act) === run) standing[i] = { done: false, taking: undefined };
    }
  }
  return standing;
}

const runOf = (act: ProofAct | undefined) => (act === undefined || act.kind === "cautions" ? undefined : act.run);
