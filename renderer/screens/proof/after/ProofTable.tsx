import type { ProofRow } from "../../../../app/contract/proofViews.ts";
import { methodTexts } from "../../../../app/words/proofMethodTexts.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { judgedTexts } from "../words/proofStateTexts.ts";
import { afterTexts } from "./afterTexts.ts";

/** A gauge's proofs, newest first, each a way to its page. */
export function ProofTable({ rows }: { readonly rows: readonly ProofRow[] }) {
  const speech = useSpeech();
  const words = useWords(afterTexts);
  const methods = useWords(methodTexts);
  const judged = useWords(judgedTexts);
  const percent = (share: number) => speech.number(100 * share, 3);
  return (
    <div className="sideways">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.colOn}</th>
            <th scope="col">{words.colAs}</th>
            <th scope="col">{words.colMethod}</th>
            <th scope="col">{words.colClass}</th>
            <th scope="col" className="num">
              {words.colWorst}
            </th>
            <th scope="col">{words.colJudged}</th>
            <th scope="col" className="num">
              {words.colChange}
            </th>
            <th scope="col">{words.colCurve}</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.proofId}>
              <th scope="row">
                <a href={hrefOf({ place: "proof", proofId: row.proofId })}>{speech.plainDate(row.on)}</a>
              </th>
              <td>{judged[row.as]}</td>
              <td>{methods[row.method]}</td>
              <td>{row.class ?? "–"}</td>
              <td className="num">{row.worstPct == null ? "–" : speech.number(row.worstPct, 3)}</td>
              <td>
                <span
                  className={`proof ${row.judged === "off" ? "pastDue" : row.judged === "good" ? "current" : "none"}`}
                >
                  <i aria-hidden="true" />
                  {judged[row.judged]}
                </span>
              </td>
              <td className="num">
                {row.change === null ? "–" : `${percent(row.change.relative)} ± ${percent(row.change.expanded)}`}
              </td>
              <td>{row.inUse ? words.curveInUse : row.curveTaken ? words.curveTaken : words.curveNot}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
