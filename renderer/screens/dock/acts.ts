import type { DockingView } from "../../../app/contract/roundViews.ts";
import type { Question } from "../../../app/round/match/RoundMatch.ts";
import { type Answer, answer, move, type Placed, placedOf } from "./Placed.ts";

/** One thing done to a docking before it is accepted: an answer to questions alike, or readings sent elsewhere. */
export type Act =
  | { readonly kind: "answer"; readonly at: readonly number[]; readonly said: Exclude<Answer, "moved"> }
  | { readonly kind: "move"; readonly group: number; readonly stop: number | undefined };

/** The proposal with all acts laid over it, so that any of them can be taken back and the others stand. */
export function afterActs(view: DockingView, acts: readonly Act[]): Placed {
  return acts.reduce(
    (placed, act) =>
      act.kind === "answer"
        ? answer(placed, act.at, view.questions, act.said)
        : move(placed, act.group, act.stop, view.questions),
    placedOf(view),
  );
}

/** The acts without what answered these questions: they are open again, and their readings lie where they were proposed. */
export function takenBack(view: DockingView, acts: readonly Act[], at: readonly number[]): readonly Act[] {
  const open = new Set(at);
  const takes = at.map((i) => view.questions[i]!.takes);
  const { groups } = placedOf(view);
  return acts.flatMap((act): readonly Act[] => {
    if (act.kind === "answer") {
      const rest = act.at.filter((i) => !open.has(i));
      return rest.length === 0 ? [] : [{ ...act, at: rest }];
    }
    const moved = new Set(groups[act.group]!.takes);
    return takes.some((own) => own.every((t) => moved.has(t))) ? [] : [act];
  });
}

/** Questions of one kind that one answer serves. */
export type QuestionKind = { readonly like: Question; readonly at: readonly number[] };

/** Questions that ask the same and propose the same stand together, in the order in which the first of each was asked. */
export function kindsOf(questions: readonly Question[]): readonly QuestionKind[] {
  const kinds = Map.groupBy(questions.keys(), (i) => {
    const { code, proposal, factor } = questions[i]!;
    return `${code} ${proposal} ${factor ?? ""}`;
  });
  return [...kinds.values()].map((at) => ({ like: questions[at[0]!]!, at }));
}
