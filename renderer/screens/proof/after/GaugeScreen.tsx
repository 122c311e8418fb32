import { useState } from "react";
import { useStore } from "zustand";
import type { GaugeProofs } from "../../../../app/contract/proofViews.ts";
import type { GaugeRow } from "../../../../app/contract/recordViews.ts";
import { methodTexts } from "../../../../app/words/proofMethodTexts.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { useList } from "../../../state/useList.ts";
import { Button } from "../../../ui/Button.tsx";
import { EmptyState } from "../../../ui/feedback/EmptyState.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { gaugesTexts } from "../../gauges/texts.ts";
import { leadTexts } from "../lead/leadTexts.ts";
import { judgedTexts } from "../words/proofStateTexts.ts";
import { AdjustDialog } from "./AdjustDialog.tsx";
import { afterTexts } from "./afterTexts.ts";
import { DriftFigure } from "./DriftFigure.tsx";
import { ProofTable } from "./ProofTable.tsx";
import { useGaugeProofs } from "./useGaugeProofs.ts";
import "../plan/plan.css";

/** Can this gauge be trusted: its proofs, its drift, what was adjusted, when it is due. */
export function GaugeScreen({ gaugeId }: { readonly gaugeId: string }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(afterTexts);
  const lead = useWords(leadTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const rows = useList("gauges").rows;
  const proofs = useGaugeProofs(gaugeId);
  const inWork = useStore(core.proof, ({ proof }) => proof?.gauge.gaugeId === gaugeId);
  const [adjusting, setAdjusting] = useState(false);
  if (rows === undefined || proofs === undefined) return <p role="status">{common.loading}</p>;
  const row = rows.find(({ gauge }) => gauge.gaugeId === gaugeId);
  if (row === undefined) return <EmptyState title={words.noGauge}>{words.noGaugeWhy}</EmptyState>;
  return (
    <div className="stack">
      <div className="back">
        <a href={hrefOf({ place: "gauges" })}>{`← ${words.toGauges}`}</a>
      </div>
      <header className="place">
        <div>
          <h1>{row.gauge.name}</h1>
          <GaugeSentence row={row} proofs={proofs} />
        </div>
        <div className="row">
          <a
            className="button main"
            href={hrefOf(inWork ? { place: "proving" } : { place: "gauge", gaugeId, part: "prove" })}
          >
            {inWork ? lead.resumeHere : words.prove}
          </a>
          {row.proofState === "off" && proofs.rows[0] !== undefined && (
            <a className="button" href={hrefOf({ place: "proof", proofId: proofs.rows[0].proofId, part: "affected" })}>
              {words.showAffected}
            </a>
          )}
          <Button onClick={() => setAdjusting(true)}>{words.adjust}</Button>
        </div>
      </header>
      <section className="sheet tall" aria-labelledby="proofs-title">
        <h2 id="proofs-title">{words.proofs}</h2>
        {proofs.rows.length === 0 ? <p className="why">{words.none}</p> : <ProofTable rows={proofs.rows} />}
      </section>
      {proofs.drift.steps.length > 0 && <DriftFigure drift={proofs.drift} gaugeName={row.gauge.name} unit={unit} />}
      {proofs.adjustments.length > 0 && (
        <section className="sheet tall" aria-labelledby="adjustments-title">
          <h2 id="adjustments-title">{words.adjustments}</h2>
          <dl>
            {proofs.adjustments.map((one) => (
              <div key={one.adjustmentId} className="row">
                <dt>{speech.date(Date.parse(one.at))}</dt>
                <dd>{one.what}</dd>
              </div>
            ))}
          </dl>
        </section>
      )}
      {adjusting && (
        <AdjustDialog
          gaugeId={gaugeId}
          asFoundProofId={proofs.rows[0]?.as === "found" ? proofs.rows[0].proofId : undefined}
          onClose={() => setAdjusting(false)}
        />
      )}
    </div>
  );
}

function GaugeSentence({ row, proofs }: { readonly row: GaugeRow; readonly proofs: GaugeProofs }) {
  const speech = useSpeech();
  const words = useWords(afterTexts);
  const methods = useWords(methodTexts);
  const judged = useWords(judgedTexts);
  const gaugeWords = useWords(gaugesTexts);
  const { gauge, proofState } = row;
  const last = proofs.rows[0];
  const { perYear } = proofs.drift;
  if (last === undefined && gauge.provedOn === undefined) return <p className="why">{words.never(gauge.name)}</p>;
  const how =
    last === undefined
      ? undefined
      : [methods[last.method], last.class === undefined ? judged[last.judged] : `${words.colClass} ${last.class}`].join(
          ", ",
        );
  return (
    <p className="why">
      {how !== undefined && last !== undefined && words.proved(gauge.name, speech.plainDate(last.on), how)}{" "}
      {proofState === "off" && <b>{gaugeWords.foundOff(gauge.name)}</b>}
      {proofState !== "off" &&
        gauge.dueOn !== undefined &&
        (proofState === "pastDue" ? (
          <b>{words.late(speech.plainDate(gauge.dueOn))}</b>
        ) : (
          words.until(speech.plainDate(gauge.dueOn))
        ))}{" "}
      {perYear === undefined || perYear === null
        ? proofs.rows.length > 0 && words.driftUnknown
        : words.driftIs(speech.percent(perYear.slope, 3), speech.percent(perYear.expanded, 3))}
    </p>
  );
}
