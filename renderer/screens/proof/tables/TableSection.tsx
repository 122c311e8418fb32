import { lazy, Suspense, useState } from "react";
import type { ProofTableRow } from "../../../../app/contract/proofViews.ts";
import { useList } from "../../../state/useList.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { tableTexts } from "./tableTexts.ts";

const TableForm = lazy(async () => ({ default: (await import("./TableForm.tsx")).TableForm }));

/** The limits classes are given by: whether somebody has held them against an edition, and the way to do so. */
export function TableSection() {
  const words = useWords(tableTexts);
  const { rows } = useList("tables");
  const [open, setOpen] = useState<ProofTableRow>();
  return (
    <section className="sheet tall" aria-labelledby="tables-title">
      <div className="row head">
        <h2 id="tables-title">{words.title}</h2>
      </div>
      <p className="why">{words.why}</p>
      <div className="sideways">
        <table className="cards">
          <thead>
            <tr>
              <th scope="col">{words.colMethod}</th>
              <th scope="col">{words.colEdition}</th>
              <th scope="col">{words.colState}</th>
              <td />
            </tr>
          </thead>
          <tbody>
            {(rows ?? []).map((row) => (
              <tr key={row.table}>
                <th scope="row">{words[row.table]}</th>
                <td data-label={words.colEdition}>{row.value.standard}</td>
                <td data-label={words.colState}>
                  {row.value.fromMemory ? words[row.own ? "entered" : "memory"] : words.checked}
                </td>
                <td className="num acts">
                  <Button kind="quiet" aria-label={words.enterOf(words[row.table])} onClick={() => setOpen(row)}>
                    {words.enter}
                  </Button>
                </td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {open !== undefined && (
        <Suspense>
          <TableForm row={open} onClose={() => setOpen(undefined)} />
        </Suspense>
      )}
    </section>
  );
}
