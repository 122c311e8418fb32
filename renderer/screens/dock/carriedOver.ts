import type { DockingView } from "../../../app/contract/roundViews.ts";
import type { Question } from "../../../app/round/match/RoundMatch.ts";
import type { Act } from "./acts.ts";
import { placedOf } from "./Placed.ts";

/**
 * What was done to a docking, laid over the same docking matched anew: an answer where the same is still asked of the same
 * readings, a move where they still stand together and the spindle is still there. The rest is asked again.
 */
export function carriedOver(before: DockingView, acts: readonly Act[], after: DockingView): readonly Act[] {
  if (before.takes.length !== after.takes.length) return []; // some were filed meanwhile: positions mean other readings now
  const asked = new Map(after.questions.map((question, i) => [keyOf(question, after), i]));
  const [from, to] = [placedOf(before).groups, placedOf(after).groups];
  const groups = new Map(to.map(({ takes }, i) => [takes.join(), i]));
  const stops = new Map(after.stops.map(({ spindleId }, i) => [spindleId, i]));
  return acts.flatMap((act): readonly Act[] => {
    if (act.kind === "answer") {
      const at = act.at.flatMap((i) => asked.get(keyOf(before.questions[i]!, before)) ?? []);
      return at.length === 0 ? [] : [{ ...act, at }];
    }
    const group = groups.get(from[act.group]!.takes.join());
    const stop = act.stop === undefined ? undefined : stops.get(before.stops[act.stop]!.spindleId);
    if (group === undefined || (act.stop !== undefined && stop === undefined)) return [];
    return [{ ...act, group, stop }];
  });
}

/** The same question about the same readings and spindles, with the same proposal. */
const keyOf = ({ code, proposal, factor, takes, stops }: Question, view: DockingView) =>
  JSON.stringify([code, proposal, factor, takes, stops.map((s) => view.stops[s]?.spindleId)]);
