import type { GaugeRow } from "../../../app/contract/recordViews.ts";
import { useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { Button } from "../../ui/Button.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { LastProof } from "./LastProof.tsx";
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
      <table className="cards">
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
            <tr
              key={row.gauge.gaugeId}
              data-thing={row.gauge.gaugeId}
              className={row.gauge.state === "retired" ? "void" : undefined}
            >
              <th scope="row">
                <a href={hrefOf({ place: "gauge", gaugeId: row.gauge.gaugeId })}>{row.gauge.name}</a>{" "}
                <small>{row.gauge.state === "retired" ? common.retired : row.gauge.serial}</small>
              </th>
              <td className="num" data-label={words.colCapacity}>
                {speech.force(row.gauge.capacityN, unit, 1000)}
              </td>
              <td data-label={words.colState}>
                <ProofState state={row.proofState} />
              </td>
              <td data-label={words.colProved}>
                <LastProof gaugeId={row.gauge.gaugeId} provedOn={row.gauge.provedOn} />
              </td>
              <td data-label={words.colDue}>{date(row.gauge.dueOn)}</td>
              <td className="num" data-label={words.colChecks}>
                {row.checkCount}
              </td>
              <td className="num acts">
                {row.gauge.state === "inUse" && (
                  <a
                    className="button"
                    aria-label={words.proveOf(row.gauge.name)}
                    href={hrefOf({ place: "gauge", gaugeId: row.gauge.gaugeId, part: "prove" })}
                  >
                    {words.prove}
                  </a>
                )}
                <Button
                  kind="quiet"
                  icon="edit"
                  aria-label={`${common.edit}: ${row.gauge.name}`}
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
