import type { AdapterRow } from "../../../app/contract/recordViews.ts";
import { hrefOf } from "../../state/routeStore.ts";
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
      <table className="cards">
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
            <tr
              key={row.adapter.adapterId}
              data-thing={row.adapter.adapterId}
              className={row.adapter.state === "retired" ? "void" : undefined}
            >
              <th scope="row">
                {row.adapter.name}{" "}
                <small>{row.adapter.state === "retired" ? common.retired : row.adapter.serial}</small>
              </th>
              <td data-label={words.colTaper}>{row.adapter.taper}</td>
              <td className="num" data-label={words.colScale}>
                {speech.number(row.adapter.scale, 4)}
              </td>
              <td data-label={words.colState}>
                {row.adapter.assumed ? words.notCalibrated : <ProofState state={row.proofState} />}
              </td>
              <td data-label={words.colCalibrated}>{date(row.adapter.calibratedOn)}</td>
              <td data-label={words.colDue}>{date(row.adapter.dueOn)}</td>
              <td className="num" data-label={words.colChecks}>
                {row.checkCount}
              </td>
              <td className="num acts">
                {row.adapter.state === "inUse" && (
                  <a
                    className="button"
                    aria-label={words.factorOf(row.adapter.name)}
                    href={hrefOf({ place: "factor", adapterId: row.adapter.adapterId })}
                  >
                    {words.factor}
                  </a>
                )}
                <Button
                  kind="quiet"
                  icon="edit"
                  aria-label={`${common.edit}: ${row.adapter.name}`}
                  onClick={() => onEdit(row)}
                >
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
