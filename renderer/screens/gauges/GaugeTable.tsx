import type { GaugeRow } from "../../../app/contract/recordViews.ts";
import { useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ProofState } from "./ProofState.tsx";
import { gaugesTexts } from "./texts.ts";

/** The gauges, each with its capacity and whether its proof holds. */
export function GaugeTable({
  rows,
  onEdit,
}: {
  readonly rows: readonly GaugeRow[];
  readonly onEdit: (row: GaugeRow) => void;
}) {
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const common = useWords(commonTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const date = (plain: string | undefined) => (plain === undefined ? "–" : speech.plainDate(plain));
  return (
    <div className="sideways">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.colName}</th>
            <th scope="col" className="num">
              {words.colCapacity}
            </th>
            <th scope="col">{words.colState}</th>
            <th scope="col">{words.colProved}</th>
            <th scope="col">{words.colDue}</th>
            <th scope="col" className="num">
              {words.colChecks}
            </th>
            <td />
          </tr>
        </thead>
        <tbody>
          {rows.map((row) => (
            <tr key={row.gauge.gaugeId} className={row.gauge.state === "retired" ? "void" : undefined}>
              <th scope="row">
                {row.gauge.name} <small>{row.gauge.state === "retired" ? common.retired : row.gauge.serial}</small>
              </th>
              <td className="num">{speech.force(row.gauge.capacityN, unit, 1000)}</td>
              <td>
                <ProofState state={row.proofState} />
              </td>
              <td>{date(row.gauge.provedOn)}</td>
              <td>{date(row.gauge.dueOn)}</td>
              <td className="num">{row.checkCount}</td>
              <td className="num">
                <Button kind="quiet" aria-label={`${common.edit}: ${row.gauge.name}`} onClick={() => onEdit(row)}>
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
