import { lazy, Suspense, useState } from "react";
import type { ReferenceRow } from "../../../../app/contract/proofViews.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { useList } from "../../../state/useList.ts";
import { Button } from "../../../ui/Button.tsx";
import { SaveTable } from "../../../ui/SaveTable.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { referenceRows } from "./referenceRows.ts";
import { referenceTexts } from "./referenceTexts.ts";

const ReferenceForm = lazy(async () => ({ default: (await import("./ReferenceForm.tsx")).ReferenceForm }));

/** What gauges are proved against. One past its own due date is said to be so. */
export function ReferenceSection() {
  const words = useWords(referenceTexts);
  const speech = useSpeech();
  const { rows } = useList("references");
  const [open, setOpen] = useState<{ readonly row: ReferenceRow | undefined }>();
  return (
    <section className="sheet tall" aria-labelledby="references-title">
      <div className="row head">
        <h2 id="references-title">{words.title}</h2>
        <div className="row">
          <Button icon="add" onClick={() => setOpen({ row: undefined })}>
            {words.add}
          </Button>
          {rows !== undefined && rows.length > 0 && (
            <SaveTable name="references" of={words.title} table={() => referenceRows(rows, speech)} />
          )}
        </div>
      </div>
      {rows === undefined || rows.length === 0 ? (
        <p className="why">{words.none}</p>
      ) : (
        <ReferenceTable rows={rows} onEdit={(row) => setOpen({ row })} />
      )}
      {open !== undefined && (
        <Suspense>
          <ReferenceForm row={open.row} onClose={() => setOpen(undefined)} />
        </Suspense>
      )}
    </section>
  );
}

function ReferenceTable({
  rows,
  onEdit,
}: {
  readonly rows: readonly ReferenceRow[];
  readonly onEdit: (row: ReferenceRow) => void;
}) {
  const speech = useSpeech();
  const words = useWords(referenceTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  return (
    <div className="sideways">
      <table className="cards">
        <thead>
          <tr>
            <th scope="col">{words.colName}</th>
            <th scope="col">{words.colKind}</th>
            <th scope="col" className="num">
              {words.colCapacity}
            </th>
            <th scope="col">{words.colClass}</th>
            <th scope="col">{words.colDue}</th>
            <td />
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => {
            const { reference, dueState } = row;
            const capacityN = reference.transducer?.capacityN ?? reference.typed?.capacityN;
            const dueOn = reference.transducer?.dueOn ?? reference.typed?.dueOn;
            return (
              <tr key={reference.referenceId} className={reference.state === "retired" ? "void" : undefined}>
                <th scope="row">
                  {reference.name} <small>{reference.state === "retired" ? common.retired : reference.serial}</small>
                </th>
                <td data-label={words.colKind}>{words[reference.kind]}</td>
                <td className="num" data-label={words.colCapacity}>
                  {capacityN === undefined ? "–" : speech.force(capacityN, unit, 1000)}
                </td>
                <td data-label={words.colClass}>{reference.transducer?.class ?? "–"}</td>
                <td data-label={words.colDue}>
                  {dueOn === undefined ? "–" : speech.plainDate(dueOn)}
                  {dueState === "pastDue" && (
                    <>
                      {" "}
                      <span className="proof pastDue">
                        <i aria-hidden="true" />
                        {words.pastDue}
                      </span>
                    </>
                  )}
                </td>
                <td className="num acts">
                  <Button
                    kind="quiet"
                    icon="edit"
                    aria-label={words.editOf(reference.name)}
                    onClick={() => onEdit(row)}
                  >
                    {common.edit}
                  </Button>
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
