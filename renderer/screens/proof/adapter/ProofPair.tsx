import type { ProofRow } from "../../../../app/contract/proofViews.ts";
import type { GaugeRow } from "../../../../app/contract/recordViews.ts";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useGaugeProofs } from "../after/useGaugeProofs.ts";
import { judgedTexts } from "../words/proofStateTexts.ts";
import { factorTexts } from "./factorTexts.ts";

/** Two filed proofs of one gauge: without the adapter, and with it. */
export function ProofPair({
  gauges,
  gaugeId,
  without,
  withIt,
  onChoose,
}: {
  readonly gauges: readonly GaugeRow[];
  readonly gaugeId: string;
  readonly without: string;
  readonly withIt: string;
  readonly onChoose: (part: { readonly gaugeId?: string; readonly without?: string; readonly withIt?: string }) => void;
}) {
  const speech = useSpeech();
  const words = useWords(factorTexts);
  const judged = useWords(judgedTexts);
  const rows = useGaugeProofs(gaugeId)?.rows ?? [];
  const options = (wanted: (row: ProofRow) => boolean) => [
    { value: "", label: words.choose },
    ...rows
      .filter(wanted)
      .map((row) => ({ value: row.proofId, label: `${speech.plainDate(row.on)}, ${judged[row.as]}` })),
  ];
  const hasAdapter = ({ adapterId }: ProofRow) => adapterId != null;
  return (
    <div className="fields">
      <SelectField
        label={words.gauge}
        value={gaugeId}
        options={gauges.map(({ gauge }) => ({ value: gauge.gaugeId, label: gauge.name }))}
        onChoose={(id) => onChoose({ gaugeId: id, without: "", withIt: "" })}
      />
      <SelectField
        label={words.withoutProof}
        value={without}
        options={options((row) => !hasAdapter(row))}
        onChoose={(id) => onChoose({ without: id })}
      />
      <SelectField
        label={words.withProof}
        hint={rows.length < 2 ? words.noProofs : undefined}
        value={withIt}
        options={options(hasAdapter)}
        onChoose={(id) => onChoose({ withIt: id })}
      />
    </div>
  );
}
