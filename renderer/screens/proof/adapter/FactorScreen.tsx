import { type FormEvent, useState } from "react";
import type { Input } from "../../../../app/contract/methods.ts";
import type { FactorView } from "../../../../app/contract/proofViews.ts";
import type { AdapterRow } from "../../../../app/contract/recordViews.ts";
import { proofRefusalWords } from "../../../../app/words/proofRefusalWords.ts";
import type { Speech } from "../../../../app/words/Speech.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { useList } from "../../../state/useList.ts";
import { Button } from "../../../ui/Button.tsx";
import { Caution } from "../../../ui/feedback/Caution.tsx";
import { EmptyState } from "../../../ui/feedback/EmptyState.tsx";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { Choices } from "../../../ui/field/Choices.tsx";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { errorWords } from "../../../words/errorWords.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { AdapterDoubt } from "./AdapterDoubt.tsx";
import { FactorResult } from "./FactorResult.tsx";
import { firstPairs, pairsOf } from "./factorDraft.ts";
import { factorTexts } from "./factorTexts.ts";
import { PairFields } from "./PairFields.tsx";
import { ProofPair } from "./ProofPair.tsx";
import "../plan/plan.css";
import "./factor.css";

/** What an adapter makes of a force: the same loads with and without it, or against one that is known. */
export function FactorScreen({ adapterId }: { readonly adapterId: string }) {
  const words = useWords(factorTexts);
  const common = useWords(commonTexts);
  const adapters = useList("adapters").rows;
  if (adapters === undefined) return <p role="status">{common.loading}</p>;
  const row = adapters.find(({ adapter }) => adapter.adapterId === adapterId);
  if (row === undefined) return <EmptyState title={words.noAdapter}>{words.noAdapterWhy}</EmptyState>;
  return (
    <div className="stack plan">
      <header className="place">
        <div>
          <h1>{words.title(row.adapter.name)}</h1>
          <p className="why">{words.why}</p>
        </div>
      </header>
      <Caution title={words.cautionTitle}>{words.caution}</Caution>
      <FactorForm
        row={row}
        others={adapters.filter(
          ({ adapter }) => adapter.adapterId !== adapterId && !adapter.assumed && adapter.state === "inUse",
        )}
      />
    </div>
  );
}

function FactorForm({ row, others }: { readonly row: AdapterRow; readonly others: readonly AdapterRow[] }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(factorTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const gauges = (useList("gauges").rows ?? []).filter(({ gauge }) => gauge.state === "inUse");
  const [known, setKnown] = useState("");
  const [from, setFrom] = useState<"typed" | "proofs">("typed");
  const [pairs, setPairs] = useState(firstPairs);
  const [chosen, setChosen] = useState({ gaugeId: "", without: "", withIt: "" });
  const [view, setView] = useState<FactorView>();
  const [refused, setRefused] = useState<string>();
  const [doubting, setDoubting] = useState(false);
  const gaugeId = chosen.gaugeId === "" ? (gauges[0]?.gauge.gaugeId ?? "") : chosen.gaugeId;

  const source = (): Input<"adapters.factor">["from"] | undefined => {
    if (from === "proofs")
      return chosen.without === "" || chosen.withIt === ""
        ? undefined
        : { withoutProofId: chosen.without, withProofId: chosen.withIt };
    const read = pairsOf(pairs, unit);
    return read === undefined ? undefined : { pairs: read };
  };
  const work = async (file: boolean, dueOn: string) => {
    const figures = source();
    if (figures === undefined) return setRefused(from === "typed" ? words.noNumber : words.noProofs);
    const answer = await core.client.call("adapters.factor", {
      adapterId: row.adapter.adapterId,
      from: figures,
      file,
      ...(known === "" ? {} : { knownAdapterId: known }),
      ...(dueOn === "" ? {} : { dueOn }),
    });
    setRefused(answer.ok ? refusalOf(answer.value, speech) : errorWords(answer.error, speech));
    setView(answer.ok ? answer.value : undefined);
    if (answer.ok && answer.value.change?.off === true) setDoubting(true);
  };
  const change = (act: () => void) => {
    act();
    setView(undefined); // what was worked out belongs to other figures
  };
  // Worked out just now, or filed as the newest calibration: either puts those made with the scale before in doubt.
  const found = view?.factor ?? filedScale(row);
  return (
    <>
      <form
        className="sheet part stack"
        noValidate
        onSubmit={(event: FormEvent) => {
          event.preventDefault();
          work(false, "");
        }}
      >
        <div className="fields">
          <SelectField
            label={words.against}
            value={known}
            options={[
              { value: "", label: words.alone },
              ...others.map(({ adapter }) => ({
                value: adapter.adapterId,
                label: `${adapter.name} (${speech.number(adapter.scale, 4)})`,
              })),
            ]}
            onChoose={(id) => change(() => setKnown(id))}
          />
        </div>
        <Choices
          label={words.from}
          value={from}
          options={(["typed", "proofs"] as const).map((value) => ({ value, label: words[value] }))}
          onChoose={(value) => change(() => setFrom(value))}
        />
        {from === "typed" ? (
          <PairFields pairs={pairs} unit={unit} known={known !== ""} onPairs={(next) => change(() => setPairs(next))} />
        ) : (
          <ProofPair
            gauges={gauges}
            gaugeId={gaugeId}
            without={chosen.without}
            withIt={chosen.withIt}
            onChoose={(part) => change(() => setChosen({ ...chosen, gaugeId, ...part }))}
          />
        )}
        {refused !== undefined && <Problem>{refused}</Problem>}
        <div className="row">
          <Button kind={view?.factor === undefined ? "main" : "plain"} type="submit">
            {words.work}
          </Button>
        </div>
        {view?.factor !== undefined && <FactorResult view={view} onFile={(dueOn) => work(true, dueOn)} />}
      </form>
      {found !== undefined && (
        <details className="sheet part" open={doubting} onToggle={(event) => setDoubting(event.currentTarget.open)}>
          <summary>{view?.factor === undefined ? words.doubtBefore : words.doubtNow}</summary>
          {/* Worked out in a job: only for whoever looks. */}
          {doubting && <AdapterDoubt adapterId={row.adapter.adapterId} scale={found.scale} relative={found.relative} />}
        </details>
      )}
    </>
  );
}

const filedScale = ({ adapter }: AdapterRow) =>
  adapter.version > 1 ? { scale: adapter.scale, relative: adapter.scaleUncertainty } : undefined;

const refusalOf = ({ refused, refusedWhy }: FactorView, speech: Speech) =>
  refused === undefined ? undefined : proofRefusalWords({ said: refused, why: refusedWhy }, speech);
