import type { AdapterRow } from "../../../app/contract/recordViews.ts";
import { Button } from "../../ui/Button.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ProofState } from "./ProofState.tsx";
import { gaugesTexts } from "./texts.ts";

/** The adapters, each with its scale and whether its calibration holds. */
export function AdapterTable({
  rows,
  onEdit,
}: {
  readonly rows: readonly AdapterRow[];
  readonly onEdit: (row: AdapterRow) => void;
}) {
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const common = useWords(commonTexts);
  const date = (plain: string | undefined) => (plain === undefined ? "–" : speech.plainDate(plain));
  return (
    <div className="sideways">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.colName}</th>
            <th scope="col">{words.colTaper}</th>
            <th scope="col" className="num">
              {words.colScale}
            </th>
            <th scope="col">{words.colState}</th>
            <th scope="col">{words.colCalibrated}</th>
            <th scope="col">{words.colDue}</th>
            <th scope="col" className="num">
              {words.colChecks}
            </th>
            <td />
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.adapter.adapterId} className={row.adapter.state === "retired" ? "void" : undefined}>
              <th scope="row">
                {row.adapter.name}{" "}
                <small>{row.adapter.state === "retired" ? common.retired : row.adapter.serial}</small>
              </th>
              <td>{row.adapter.taper}</td>
              <td className="num">{speech.number(row.adapter.scale, 4)}</td>
              <td>{row.adapter.assumed ? words.notCalibrated : <ProofState state={row.proofState} />}</td>
              <td>{date(row.adapter.calibratedOn)}</td>
              <td>{date(row.adapter.dueOn)}</td>
              <td className="num">{row.checkCount}</td>
              <td className="num">
                <Button kind="quiet" aria-label={`${common.edit}: ${row.adapter.name}`} onClick={() => onEdit(row)}>
                  {common.edit}
                </Button>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
