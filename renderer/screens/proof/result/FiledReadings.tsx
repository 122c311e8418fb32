import type { ProofPage } from "../../../../app/contract/proofViews.ts";
import type { FiledTaking } from "../../../../app/ledger/proof.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { replacedReason } from "../../../../app/words/replacedReason.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { actTexts } from "../words/actTexts.ts";
import { actShort } from "../words/actWords.ts";
import { fileTexts } from "./fileTexts.ts";

/** Every reading as it was taken, with those that were taken again and why. */
export function FiledReadings({ page, unit }: { readonly page: ProofPage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(fileTexts);
  const said = useWords(actTexts);
  const { takings } = page.proof;
  const anyAgain = takings.some(({ replaced }) => replaced !== null);
  const figure = (forceN: number) => speech.number(fromNewtons(forceN, unit), 4);
  const name = ({ direction, step, targetN, run, positionDeg }: FiledTaking) =>
    actShort(
      { kind: "read", direction, step: step ?? undefined, targetN, run, positionDeg, waitS: 0, readS: 0 },
      speech,
      unit,
    );
  return (
    <details className="sheet tall">
      <summary>{words.readings}</summary>
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.colRun}</th>
              <th scope="col">{words.colStep}</th>
              <th scope="col" className="num">
                {words.colReference(unitText(unit))}
              </th>
              <th scope="col" className="num">
                {words.colShown(unitText(unit))}
              </th>
              {anyAgain && <th scope="col">{words.colWhy}</th>}
            </tr>
          </thead>
          <tbody>
            {takings.map((taking) => (
              <tr key={`${taking.act} ${taking.at}`} className={taking.replaced === null ? undefined : "void"}>
                <td>{said.run(taking.run)}</td>
                <th scope="row">{name(taking)}</th>
                <td className="num">{figure(taking.referenceN)}</td>
                <td className="num">
                  {figure(taking.indicationN)} {taking.indicationTyped !== null && <small>{words.typed}</small>}
                </td>
                {anyAgain && <td>{taking.replaced && replacedReason(taking.replaced.reason, speech)}</td>}
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <p className="small soft">
        {words.record}: {page.origin.slice(0, 8)}/{page.seq}, {words.hash} {page.hash}
      </p>
    </details>
  );
}
