import { useState } from "react";
import type { ProofTableRow } from "../../../../app/contract/proofViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { SaveDialog } from "../../../ui/SaveDialog.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { proofErrorWords } from "../words/proofErrorWords.ts";
import { classFigures, tableDraftOf, tableOf, wholeFigures } from "./tableDraft.ts";
import { tableTexts } from "./tableTexts.ts";
import "../references/references.css";

/** A table of limits, figure by figure, as the laboratory's own edition of the standard has it. */
export function TableForm({ row, onClose }: { readonly row: ProofTableRow; readonly onClose: () => void }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(tableTexts);
  const [draft, setDraft] = useState(() => tableDraftOf(row));
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();
  const { value, faults } = tableOf(row.table, draft);
  const errorAt = (field: string) => {
    const fault = tried ? faults.get(field) : undefined;
    return fault === undefined ? undefined : words[fault];
  };
  const keep = async (kept: typeof value | null) => {
    const answer = await core.client.call("proofs.saveTable", { table: row.table, value: kept });
    if (!answer.ok) return setRefused(proofErrorWords(answer.error, speech));
    core.toasts.getState().show({ text: words.saved, untilMs: Date.now() + 6_000 });
    onClose();
  };
  const field = (name: string) => ({
    value: draft.figures[name] ?? "",
    onText: (text: string) => setDraft({ ...draft, figures: { ...draft.figures, [name]: text } }),
    inputMode: "decimal" as const,
    error: errorAt(name),
  });
  return (
    <SaveDialog
      wide
      title={words.enterOf(words[row.table])}
      refused={refused}
      onClose={onClose}
      onSave={() => {
        setTried(true);
        if (faults.size === 0) keep(value);
      }}
    >
      <TextField
        wide
        label={words.edition}
        hint={words.editionHint}
        value={draft.standard}
        onText={(standard) => setDraft({ ...draft, standard, checked: false })}
        maxLength={120}
        error={errorAt("standard")}
      />
      {draft.classes.map((name, i) => (
        <fieldset key={name} className="group">
          <legend>{words.classOf(name)}</legend>
          <div className="fields narrow">
            {classFigures.map((figure) => (
              <TextField key={figure} label={words[figure]} {...field(`${figure}${i}`)} />
            ))}
          </div>
        </fieldset>
      ))}
      <div className="fields">
        {wholeFigures[row.table].map((figure) => (
          <TextField key={figure} label={words[figure]} {...field(figure)} />
        ))}
      </div>
      <div>
        <Tick checked={draft.checked} onTick={(checked) => setDraft({ ...draft, checked })}>
          {words.tick}
        </Tick>
        <p className="soft">{words.tickHint}</p>
      </div>
      {row.own && (
        <div>
          <Button kind="quiet" onClick={() => keep(null)}>
            {words.shipped}
          </Button>
        </div>
      )}
    </SaveDialog>
  );
}
