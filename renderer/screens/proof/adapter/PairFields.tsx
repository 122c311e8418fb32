import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { Button } from "../../../ui/Button.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { PairDraft } from "./factorDraft.ts";
import { factorTexts } from "./factorTexts.ts";

/** The readings, one load a row; zeros taken off. */
export function PairFields({
  pairs,
  unit,
  known,
  onPairs,
}: {
  readonly pairs: readonly PairDraft[];
  readonly unit: ForceUnit;
  /** Compared with another adapter. */
  readonly known: boolean;
  readonly onPairs: (pairs: readonly PairDraft[]) => void;
}) {
  const words = useWords(factorTexts);
  const cell = (i: number, name: keyof PairDraft, label: string) => (
    <TextField
      label={label}
      inputMode={name === "run" ? undefined : "decimal"}
      unit={name === "run" ? undefined : unitText(unit)}
      maxLength={20}
      value={pairs[i]![name]}
      onText={(text) => onPairs(pairs.with(i, { ...pairs[i]!, [name]: text }))}
    />
  );
  return (
    <div className="stack">
      <ol className="pairs">
        {pairs.map((_, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a reading is its place in the list
          <li key={i} aria-label={words.rowOf(String(i + 1))}>
            {cell(i, "run", words.run)}
            {cell(i, "load", words.colLoad)}
            {cell(i, "without", known ? words.colKnown : words.colWithout)}
            {cell(i, "withIt", words.colWith)}
            <Button
              kind="quiet"
              aria-label={words.removeRow(String(i + 1))}
              disabled={pairs.length === 1}
              onClick={() => onPairs(pairs.toSpliced(i, 1))}
            >
              ✕
            </Button>
          </li>
        ))}
      </ol>
      <div>
        <Button
          onClick={() =>
            onPairs([
              ...pairs,
              { run: String(pairs.length + 1), load: pairs.at(-1)?.load ?? "", without: "", withIt: "" },
            ])
          }
        >
          {words.addRow}
        </Button>
      </div>
    </div>
  );
}
