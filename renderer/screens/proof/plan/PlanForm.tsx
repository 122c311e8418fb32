import { type FormEvent, useState } from "react";
import type { GaugeProofs, ReferenceRow } from "../../../../app/contract/proofViews.ts";
import type { AdapterRow } from "../../../../app/contract/recordViews.ts";
import type { StoredPlan } from "../../../../app/ledger/proof.ts";
import type { Gauge } from "../../../../app/ledger/register.ts";
import { proofMethods } from "../../../../app/proof/plan/ProofPlan.ts";
import { planProblems } from "../../../../app/proof/plan/planProblems.ts";
import { methodTexts } from "../../../../app/words/proofMethodTexts.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { Choices } from "../../../ui/field/Choices.tsx";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { localToday } from "../../spindle/localToday.ts";
import { proofErrorWords } from "../words/proofErrorWords.ts";
import { AboutFields } from "./AboutFields.tsx";
import { AllowedFields } from "./AllowedFields.tsx";
import { aboutDraftOf, aboutOf } from "./aboutDraft.ts";
import { LoadFields } from "./LoadFields.tsx";
import { KeepPlan } from "./own/KeepPlan.tsx";
import { PlanChoice } from "./own/PlanChoice.tsx";
import { usePlanDraft } from "./own/usePlanDraft.ts";
import { planSize } from "./planDraft.ts";
import { planTexts } from "./planTexts.ts";
import { fieldOf, problemWords } from "./problemsAt.ts";
import { ReferenceChoice } from "./ReferenceChoice.tsx";
import { RunFields } from "./RunFields.tsx";
import { TimeFields } from "./TimeFields.tsx";
import { useStartProof } from "./useStartProof.ts";

/** Method, reference and plan in one form; everything has its usual figure, so that one act is enough to begin. */
export function PlanForm({
  gauge,
  proofs,
  references,
  adapters,
  plans,
}: {
  readonly gauge: Gauge;
  readonly proofs: GaugeProofs;
  readonly references: readonly ReferenceRow[];
  readonly adapters: readonly AdapterRow[];
  readonly plans: readonly StoredPlan[];
}) {
  const speech = useSpeech();
  const words = useWords(planTexts);
  const methods = useWords(methodTexts);
  const works = useProgram((state) => state.works);
  const unit = forceUnitOf(works?.unitShown ?? "kN");
  const usable = references.filter(({ reference }) => reference.state === "inUse");
  const last = proofs.rows[0];
  const [referenceId, setReferenceId] = useState(usable.length === 1 ? usable[0]!.reference.referenceId : "");
  const work = usePlanDraft(last?.method ?? "working", gauge.capacityN, unit);
  const { draft, setDraft, plan, faults } = work;
  const [said, setSaid] = useState(() =>
    aboutDraftOf({ accreditation: works?.accreditation }, undefined, works?.rule.rule ?? "iso14253", unit),
  );
  const [adapterId, setAdapterId] = useState("");
  const [read, setRead] = useState<"live" | "typed">("live");
  // After an adjustment the next proof is the one as left.
  const [as, setAs] = useState(() =>
    proofs.adjustments.some((one) => last === undefined || Date.parse(one.at) > last.provedAtMs) ? "left" : "found",
  ) as ["found" | "left", (as: "found" | "left") => void]; // the two words above
  const [tried, setTried] = useState(false);
  const { start, refused, busy } = useStartProof();

  const reference = usable.find((row) => row.reference.referenceId === referenceId)?.reference;
  const transducer = reference?.transducer;
  const problems = plan === undefined ? [] : planProblems(plan, gauge.capacityN, transducer, localToday());
  const saidNow = aboutOf(said);
  const errorAt = (field: string) => {
    const fault = faults.get(field);
    if (fault !== undefined) return words[fault];
    const here = problems.filter((problem) => plan !== undefined && fieldOf(problem, plan) === field);
    return here.length === 0 ? undefined : here.map((problem) => problemWords(problem, speech, unit)).join(" ");
  };
  const stops = problems.some((problem) => problem.stops);
  const submit = (event: FormEvent) => {
    if (event.target !== event.currentTarget) return; // a dialog over the form was saved, which begins nothing
    event.preventDefault();
    setTried(true);
    if (plan === undefined || stops || reference === undefined || saidNow.faults.size > 0) return;
    start({
      gaugeId: gauge.gaugeId,
      referenceId,
      as,
      plan: { ...plan, loadsN: [...plan.loadsN], runs: [...plan.runs] },
      gaugeRead: read,
      ...(adapterId === "" ? {} : { adapterId }),
      ...saidNow.said,
    });
  };
  const size = plan === undefined ? undefined : planSize(plan);
  return (
    <form className="stack" noValidate onSubmit={submit}>
      <section className="sheet part stack">
        <Choices
          label={words.method}
          value={draft.method}
          options={proofMethods.map((value) => ({ value, label: methods[value] }))}
          onChoose={work.chooseMethod}
        />
        <p className="why soft">{methods[`about.${draft.method}`]}</p>
        <PlanChoice plans={plans} work={work} />
        <ReferenceChoice
          references={usable}
          chosen={referenceId}
          onChoose={setReferenceId}
          error={tried && reference === undefined ? words.chooseReference : errorAt("reference")}
        />
        <Choices
          label={words.gaugeRead}
          value={read}
          options={(["live", "typed"] as const).map((value) => ({ value, label: words[value] }))}
          onChoose={setRead}
        />
        {draft.method === "working" && (
          <AllowedFields
            draft={said}
            fault={saidNow.faults.has("allowed")}
            onDraft={(part) => setSaid({ ...said, ...part })}
          />
        )}
        {plan !== undefined && size !== undefined && (
          <p>
            {words.summary(
              String(plan.loadsN.length),
              String(plan.runs.length),
              String(size.readings),
              String(size.minutes),
            )}
          </p>
        )}
        {problems.length > 0 && !stops && (
          <div className="problems">
            <b>{words.stands}</b>
            <ul>
              {problems.map((problem) => (
                <li key={problem.code}>{problemWords(problem, speech, unit)}</li>
              ))}
            </ul>
          </div>
        )}
        {refused !== undefined && <Problem>{proofErrorWords(refused, speech)}</Problem>}
        <div className="row">
          <Button kind="main" type="submit" busy={busy}>
            {words.begin}
          </Button>
        </div>
      </section>
      <details className="sheet part" open={stops || faults.size > 0 || undefined}>
        <summary>{words.details}</summary>
        <div className="stack">
          <LoadFields
            loads={draft.loads}
            unit={unit}
            errorAt={errorAt}
            onLoads={(loads) => setDraft({ ...draft, loads })}
          />
          <RunFields runs={draft.runs} errorAt={errorAt} onRuns={(runs) => setDraft({ ...draft, runs })} />
          <TimeFields draft={draft} errorAt={errorAt} onDraft={(part) => setDraft({ ...draft, ...part })} />
          <div>
            <Button onClick={() => work.chooseMethod(draft.method)}>{words.usual}</Button>
          </div>
          <KeepPlan plans={plans} work={work} stops={stops} />
        </div>
      </details>
      <details className="sheet part">
        <summary>{words.more}</summary>
        <div className="stack">
          <Choices
            label={words.as}
            value={as}
            options={(["found", "left"] as const).map((value) => ({ value, label: words[value] }))}
            onChoose={setAs}
          />
          <SelectField
            label={words.adapter}
            value={adapterId}
            options={[
              { value: "", label: words.noAdapter },
              ...adapters
                .filter(({ adapter }) => adapter.state === "inUse")
                .map(({ adapter }) => ({ value: adapter.adapterId, label: adapter.name })),
            ]}
            onChoose={setAdapterId}
          />
          <AboutFields
            draft={said}
            tried={tried}
            method={draft.method}
            onDraft={(part) => setSaid({ ...said, ...part })}
          />
        </div>
      </details>
    </form>
  );
}
