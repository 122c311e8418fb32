import type { StoredPlan } from "../../../../../app/ledger/proof.ts";
import { methodTexts } from "../../../../../app/words/proofMethodTexts.ts";
import { SelectField } from "../../../../ui/field/SelectField.tsx";
import { useWords } from "../../../../words/SpeechContext.tsx";
import { ownPlanTexts } from "./ownPlanTexts.ts";
import type { PlanInWork } from "./usePlanDraft.ts";

/** The usual plan or one of the own ones; not there while there is none. */
export function PlanChoice({ plans, work }: { readonly plans: readonly StoredPlan[]; readonly work: PlanInWork }) {
  const words = useWords(ownPlanTexts);
  const methods = useWords(methodTexts);
  const { chosen, changed, draft } = work;
  const usable = plans.filter(({ state }) => state === "inUse");
  if (usable.length === 0) return null;
  const choose = (planId: string) => {
    const plan = usable.find((one) => one.planId === planId);
    if (plan === undefined) work.chooseMethod(draft.method);
    else work.choosePlan(plan);
  };
  return (
    <div className="fields">
      <SelectField
        label={words.plan}
        hint={chosen !== undefined && changed ? words.changed(chosen.name) : undefined}
        value={chosen?.planId ?? ""}
        options={[
          { value: "", label: words.usual },
          ...usable.map(({ planId, name, method }) => ({ value: planId, label: `${name} · ${methods[method]}` })),
        ]}
        onChoose={choose}
      />
    </div>
  );
}
