import { useState } from "react";
import type { StoredPlan } from "../../../../../app/ledger/proof.ts";
import { useCore } from "../../../../state/CoreContext.ts";
import { Button } from "../../../../ui/Button.tsx";
import { Problem } from "../../../../ui/feedback/Problem.tsx";
import { useSpeech, useWords } from "../../../../words/SpeechContext.tsx";
import { proofErrorWords } from "../../words/proofErrorWords.ts";
import { OverForm } from "../OverForm.tsx";
import { NamePlan } from "./NamePlan.tsx";
import { ownPlanTexts } from "./ownPlanTexts.ts";
import type { PlanInWork } from "./usePlanDraft.ts";

/** Keeps the plan in the form under a name, changes the one it came from, retires it, or takes a retired one back. */
export function KeepPlan({
  plans,
  work,
  stops,
}: {
  readonly plans: readonly StoredPlan[];
  readonly work: PlanInWork;
  /** The plan in the form cannot be begun, so it is not kept either. */
  readonly stops: boolean;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(ownPlanTexts);
  const [naming, setNaming] = useState<"new" | "change">();
  const [refused, setRefused] = useState<string>();
  const { plan, chosen } = work;
  const retired = plans.filter(({ state }) => state === "retired");
  const tell = (text: string) => core.toasts.getState().show({ text, untilMs: Date.now() + 6_000 });
  const setState = async (one: StoredPlan, state: StoredPlan["state"]) => {
    const answer = await core.client.call("plans.save", { ...one, state });
    setRefused(answer.ok ? undefined : proofErrorWords(answer.error, speech));
    if (!answer.ok) return;
    if (state === "retired") work.chooseMethod(one.method);
    else work.choosePlan(answer.value);
    tell(state === "retired" ? words.isRetired(one.name) : words.kept(one.name));
  };
  const open = (what: "new" | "change") => {
    if (plan === undefined || stops) return setRefused(words.fixFirst);
    setRefused(undefined);
    setNaming(what);
  };
  return (
    <>
      {refused !== undefined && <Problem>{refused}</Problem>}
      <div className="row">
        <Button onClick={() => open("new")}>{words.keep}</Button>
        {chosen !== undefined && (
          <>
            <Button onClick={() => open("change")}>{words.change(chosen.name)}</Button>
            <Button kind="quiet" onClick={() => setState(chosen, "retired")}>
              {words.retire(chosen.name)}
            </Button>
          </>
        )}
      </div>
      {retired.length > 0 && (
        <section aria-label={words.retired}>
          <h3>{words.retired}</h3>
          <div className="row">
            {retired.map((one) => (
              <Button key={one.planId} kind="quiet" onClick={() => setState(one, "inUse")}>
                {words.takeBack(one.name)}
              </Button>
            ))}
          </div>
        </section>
      )}
      {naming !== undefined && plan !== undefined && (
        <OverForm>
          <NamePlan
            plan={plan}
            over={naming === "change" ? chosen : undefined}
            onClose={() => setNaming(undefined)}
            onKept={(kept) => {
              setNaming(undefined);
              work.choosePlan(kept);
              tell(words.kept(kept.name));
            }}
          />
        </OverForm>
      )}
    </>
  );
}
