import { type CSSProperties, useId } from "react";
import { useStore } from "zustand";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { ProofAct } from "../../../../app/proof/plan/proofActs.ts";
import { type ForceUnit, newtonsPerUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Tick } from "../../../ui/field/Tick.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { leadTexts } from "./leadTexts.ts";
import { PhaseLine } from "./PhaseLine.tsx";
import { SteadinessBar } from "./SteadinessBar.tsx";

type Read = Extract<ProofAct, { kind: "read" }>;

/** Target, gauge and reference in figures that are read at two metres, and how still they stand. */
export function ReadingPanel({
  proof,
  act,
  unit,
  hung,
  onHung,
}: {
  readonly proof: RunningProof;
  readonly act: Read;
  readonly unit: ForceUnit;
  readonly hung: readonly string[] | undefined;
  readonly onHung: (labels: readonly string[]) => void;
}) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const resolutionN = proof.gauge.resolutionN ?? newtonsPerUnit[unit] / 1000;
  const targetN = act.targetN === 0 || proof.hang === undefined ? act.targetN : proof.hang.forceN;
  const widest = speech.forceFigure(proof.gauge.capacityN, unit, resolutionN).length;
  return (
    <section
      className="reading"
      style={{ "--ems": widest * 0.6 + unitText(unit).length * 0.17 + 0.2 } as CSSProperties}
    >
      <div className="figures">
        <Figure
          name={act.targetN === 0 ? words.unloaded : words.target}
          figure={speech.forceFigure(targetN, unit, resolutionN)}
          unit={unit}
        />
        {proof.gaugeRead === "live" && (
          <LiveFigure which="gauge" name={words.gauge} unit={unit} resolutionN={resolutionN} />
        )}
        {proof.referenceRead === "live" && (
          <LiveFigure which="reference" name={words.reference} unit={unit} resolutionN={resolutionN} />
        )}
      </div>
      {proof.referenceRead === "weights" && (
        <Hang proof={proof} act={act} hung={hung ?? []} unit={unit} onHung={onHung} />
      )}
      {proof.gaugeRead === "live" && (
        <PhaseLine act={act} index={proof.next.kind === "act" ? proof.next.index : -1} unit={unit} />
      )}
    </section>
  );
}

function Figure({ name, figure, unit }: { readonly name: string; readonly figure: string; readonly unit: ForceUnit }) {
  return (
    <div className="figure">
      <span className="name">{name}</span>
      <output aria-live="off" aria-label={name}>
        {figure}
        <i>{unitText(unit)}</i>
      </output>
    </div>
  );
}

/** One instrument as it stands. It renders when a shown text changes, not for each word of the core. */
function LiveFigure({
  which,
  name,
  unit,
  resolutionN,
}: {
  readonly which: "gauge" | "reference";
  readonly name: string;
  readonly unit: ForceUnit;
  readonly resolutionN: number;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(leadTexts);
  // The store is read by what is shown of it, so that equal figures render once.
  const figure = useStore(core.proof, ({ watch }) => {
    const forceN = watch?.[which]?.forceN;
    return forceN === undefined ? undefined : speech.forceFigure(forceN, unit, resolutionN);
  });
  const share = useStore(core.proof, ({ watch }) => {
    const stand = watch?.[which];
    return stand === undefined ? undefined : Math.round(stand.share * 50) / 50;
  });
  const steady = useStore(core.proof, ({ watch }) => watch?.[which]?.steady === true);
  return (
    <div>
      <Figure name={name} figure={figure ?? "––"} unit={unit} />
      <SteadinessBar share={share} steady={steady} name={`${words.steadinessOf}: ${name}`} />
    </div>
  );
}

/** Which weights hang: proposed, and changed by a touch where others do. */
function Hang({
  proof,
  act,
  hung,
  unit,
  onHung,
}: {
  readonly proof: RunningProof;
  readonly act: Read;
  readonly hung: readonly string[];
  readonly unit: ForceUnit;
  readonly onHung: (labels: readonly string[]) => void;
}) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const titleId = useId();
  if (act.targetN === 0) return <p className="hang">{words.hangNone}</p>;
  const labels = proof.reference.weights?.weights.map(({ label }) => label) ?? [];
  const asProposed = proof.hang !== undefined && String(hung) === String(proof.hang.labels);
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset is for what is sent
    <div className="hang row" role="group" aria-labelledby={titleId}>
      <b id={titleId}>{words.hang}</b>
      {labels.map((label) => (
        <Tick
          key={label}
          checked={hung.includes(label)}
          onTick={(on) => onHung(labels.filter((one) => (one === label ? on : hung.includes(one))))}
        >
          {label}
        </Tick>
      ))}
      {asProposed && <span>{words.hangForce(speech.force(proof.hang?.forceN ?? 0, unit, 1))}</span>}
    </div>
  );
}
