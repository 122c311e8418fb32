import { useState } from "react";
import type { ReferenceRow } from "../../../../app/contract/proofViews.ts";
import { Button } from "../../../ui/Button.tsx";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { ReferenceForm } from "../references/ReferenceForm.tsx";
import { referenceTexts } from "../references/referenceTexts.ts";
import { OverForm } from "./OverForm.tsx";
import { planTexts } from "./planTexts.ts";

/** What the gauge is proved against; where there is nothing yet, how to begin. */
export function ReferenceChoice({
  references,
  chosen,
  error,
  onChoose,
}: {
  readonly references: readonly ReferenceRow[];
  readonly chosen: string;
  readonly error: string | undefined;
  readonly onChoose: (referenceId: string) => void;
}) {
  const words = useWords(planTexts);
  const said = useWords(referenceTexts);
  const [adding, setAdding] = useState(false);
  const about = ({ reference, dueState }: ReferenceRow) =>
    [said[reference.kind], reference.serial, dueState === "pastDue" ? said.pastDue : undefined]
      .filter((part) => part !== undefined)
      .join(", ");
  return (
    <div className="reference-choice">
      {references.length === 0 ? (
        <div>
          <b>{words.noReference}</b>
          <p className="why">{words.noReferenceWhy}</p>
          {error !== undefined && (
            <p className="error" role="alert">
              {error}
            </p>
          )}
        </div>
      ) : (
        <SelectField
          label={words.reference}
          value={chosen}
          error={error}
          options={[
            ...(chosen === "" ? [{ value: "", label: "–" }] : []),
            ...references.map((row) => ({
              value: row.reference.referenceId,
              label: `${row.reference.name} (${about(row)})`,
            })),
          ]}
          onChoose={onChoose}
        />
      )}
      <Button onClick={() => setAdding(true)}>{said.add}</Button>
      {adding && (
        <OverForm>
          <ReferenceForm
            row={undefined}
            onClose={() => setAdding(false)}
            onSaved={({ reference }) => onChoose(reference.referenceId)}
          />
        </OverForm>
      )}
    </div>
  );
}
