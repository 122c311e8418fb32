import { useStore } from "zustand";
import type { GaugeRow } from "../../../../app/contract/recordViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { useList } from "../../../state/useList.ts";
import { EmptyState } from "../../../ui/feedback/EmptyState.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { useGaugeProofs } from "../after/useGaugeProofs.ts";
import { PlanForm } from "./PlanForm.tsx";
import { planTexts } from "./planTexts.ts";
import "./plan.css";

/** Before a proof: how, against what, at which loads. */
export function PlanScreen({ gaugeId }: { readonly gaugeId: string }) {
  const core = useCore();
  const words = useWords(planTexts);
  const common = useWords(commonTexts);
  const gauges = useList("gauges").rows;
  const references = useList("references").rows;
  const adapters = useList("adapters").rows;
  const plans = useList("plans").rows;
  const proofs = useGaugeProofs(gaugeId);
  const { proof, asked } = useStore(core.proof);
  if (
    gauges === undefined ||
    references === undefined ||
    adapters === undefined ||
    plans === undefined ||
    proofs === undefined ||
    !asked
  )
    return <p role="status">{common.loading}</p>;
  const row = gauges.find(({ gauge }) => gauge.gaugeId === gaugeId);
  if (row === undefined) return <EmptyState title={words.noGauge}>{words.noGaugeWhy}</EmptyState>;
  return (
    <div className="stack plan">
      <Head row={row} />
      {proof === undefined ? (
        <PlanForm gauge={row.gauge} proofs={proofs} references={references} adapters={adapters} plans={plans} />
      ) : (
        <EmptyState
          title={words.inWork(proof.gauge.name)}
          act={
            <a className="button main" href={hrefOf({ place: "proving" })}>
              {words.goOn}
            </a>
          }
        >
          {words.inWorkWhy}
        </EmptyState>
      )}
    </div>
  );
}

function Head({ row }: { readonly row: GaugeRow }) {
  const words = useWords(planTexts);
  return (
    <header className="place">
      <div>
        <h1>{words.title(row.gauge.name)}</h1>
        <p className="why">{words.why}</p>
      </div>
    </header>
  );
}
