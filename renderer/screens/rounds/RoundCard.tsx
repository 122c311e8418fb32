import type { RoundView } from "../../../app/contract/roundViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { saveFile } from "./saveFile.ts";
import { roundsTexts } from "./texts.ts";

/** One round: how far it is, its stops in walking order, and what can be done with it. */
export function RoundCard({ round, open }: { readonly round: RoundView; readonly open: boolean }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(roundsTexts);
  const done = round.stops.filter((stop) => stop.done !== undefined).length;
  const print = async (as: "pdf" | "csv") => {
    const { roundId } = round;
    const file = await report(core.client.call("rounds.sheet", { roundId, as, language: speech.language }));
    if (file !== undefined) saveFile(file);
  };
  return (
    <details className="sheet round" open={open}>
      <summary>
        <b>{round.name}</b>{" "}
        <span className="soft">
          {speech.plainDate(round.on)} ·{" "}
          {round.state === "open" ? words.progress(done, round.stops.length) : words[round.state]}
        </span>
      </summary>
      <p className="soft">
        {words.changes(round.adapterChanges)}; {words[round.found]}.
      </p>
      <div className="row act-line">
        <Button kind={round.state === "open" ? "main" : "plain"} onClick={() => print("pdf")}>
          {words.sheet}
        </Button>
        <Button onClick={() => print("csv")}>{words.table}</Button>
        {round.state === "open" && (
          <>
            <a className="button plain" href={hrefOf({ place: "dock", roundId: round.roundId })}>
              <span>{words.dock}</span>
            </a>
            <Button
              kind="quiet"
              onClick={() => report(core.client.call("rounds.end", { roundId: round.roundId, state: "cancelled" }))}
            >
              {words.cancel}
            </Button>
          </>
        )}
      </div>
      <StopTable round={round} />
    </details>
  );
}

function StopTable({ round }: { readonly round: RoundView }) {
  const speech = useSpeech();
  const words = useWords(roundsTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const adapters = useList("adapters").rows;
  const adapterName = (id: string | undefined) => adapters?.find((row) => row.adapter.adapterId === id)?.adapter.name;
  return (
    <div className="sideways">
      <table>
        <thead>
          <tr>
            <th scope="col" className="num">
              {words.place}
            </th>
            <th scope="col">{words.spindle}</th>
            <th scope="col">{words.taper}</th>
            <th scope="col" className="num">
              {words.expected}
            </th>
            <th scope="col" className="num">
              {words.measured}
            </th>
          </tr>
        </thead>
        <tbody>
          {round.stops.map((stop, i) => {
            const name = adapterName(stop.adapterId);
            const changes = i > 0 && stop.adapterId !== round.stops[i - 1]!.adapterId;
            return (
              <tr key={stop.spindleId} className={changes ? "change" : undefined}>
                <td className="num">{stop.location}</td>
                <th scope="row">
                  <a href={hrefOf({ place: "spindle", spindleId: stop.spindleId })}>{stop.name}</a>{" "}
                  <small>{stop.area}</small>
                </th>
                <td>
                  {stop.taper} <small>{name ?? words.noAdapter}</small>
                </td>
                <td className="num">{stop.expectedN == null ? "" : speech.force(stop.expectedN, unit)}</td>
                <td className="num">{stop.done?.valueN == null ? "" : speech.force(stop.done.valueN, unit)}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
