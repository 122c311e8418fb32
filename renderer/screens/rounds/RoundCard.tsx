import { useState } from "react";
import type { Result } from "../../../app/contract/result.ts";
import type { RoundView } from "../../../app/contract/roundViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { go, hrefOf } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ReportAct } from "../records/ReportAct.tsx";
import { usualPaper } from "../records/usualPaper.ts";
import { useReport } from "../shell/useReport.ts";
import { AddSpindle } from "./AddSpindle.tsx";
import { saveFile } from "./saveFile.ts";
import { roundsTexts } from "./texts.ts";

/** One round: how far it is, its stops in walking order, and what can be done with it. */
export function RoundCard({
  round,
  open,
  onStale,
}: {
  readonly round: RoundView;
  readonly open: boolean;
  /** It turned out to have been changed meanwhile. */
  readonly onStale: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(roundsTexts);
  const done = round.stops.filter((stop) => stop.done !== undefined).length;
  const print = async (as: "pdf" | "csv") => {
    const { roundId } = round;
    const file = await report(
      core.client.call("rounds.sheet", { roundId, as, language: speech.language, paper: usualPaper() }),
    );
    if (file !== undefined) saveFile(file);
  };
  const [adding, setAdding] = useState(false);
  /** What somebody else has changed meanwhile is shown first; nothing is laid over it unseen. */
  const act = async (answer: Promise<Result<RoundView>>) => {
    const result = await answer;
    if (!result.ok && result.error.key === "roundChanged") onStale();
    return (await report(Promise.resolve(result))) !== undefined;
  };
  /** The same round with other stops. Each stop that stays keeps its adapter and number. */
  const change = (stopsOf: (spindleIds: readonly string[]) => readonly string[]) => {
    const { roundId, version, name, on, gaugeId, operatorId, note } = round;
    const adapterOf = new Map(round.stops.map((stop) => [stop.spindleId, stop.adapterId]));
    const stops = stopsOf([...adapterOf.keys()]).map((spindleId) => ({
      spindleId,
      adapterId: adapterOf.get(spindleId) ?? undefined,
    }));
    const tools = { gaugeId: gaugeId ?? undefined, operatorId: operatorId ?? undefined };
    const changed = { roundId, version, name, on, ...tools, note, made: "byHand" as const, stops };
    return act(core.client.call("rounds.save", changed));
  };
  const takeOut = (spindleId: string) => change((ids) => ids.filter((id) => id !== spindleId));
  const lead = async () => {
    const draft = await report(core.client.call("rounds.lead", { roundId: round.roundId }));
    if (draft === undefined) return;
    core.draft.setState({ draft });
    go({ place: "measure" });
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
        {round.state === "open" && (
          <Button kind="main" onClick={lead}>
            {words.lead}
          </Button>
        )}
        <Button icon="print" onClick={() => print("pdf")}>
          {words.sheet}
        </Button>
        <Button icon="save" onClick={() => print("csv")}>
          {words.table}
        </Button>
        {done > 0 && <ReportAct of={{ what: "round", roundId: round.roundId }} />}
        {round.state === "open" && (
          <>
            <Button icon="add" onClick={() => setAdding(true)}>
              {words.addSpindle}
            </Button>
            <a className="button plain" href={hrefOf({ place: "dock", roundId: round.roundId })}>
              <span>{words.dock}</span>
            </a>
            <Button
              kind="quiet"
              onClick={() => {
                const { roundId, version } = round;
                act(core.client.call("rounds.end", { roundId, version, state: "cancelled" }));
              }}
            >
              {words.cancel}
            </Button>
          </>
        )}
      </div>
      <StopTable round={round} onTakeOut={round.state === "open" && round.stops.length > 1 ? takeOut : undefined} />
      {adding && (
        <AddSpindle
          round={round}
          onAdd={async (spindleId) => {
            // Refused, the list stays open with what was typed into it.
            if (await change((ids) => [...new Set([...ids, spindleId])])) setAdding(false);
          }}
          onClose={() => setAdding(false)}
        />
      )}
    </details>
  );
}

function StopTable({
  round,
  onTakeOut,
}: {
  readonly round: RoundView;
  /** Undefined: its stops stand as they are. */
  readonly onTakeOut: ((spindleId: string) => void) | undefined;
}) {
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
            <td />
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
                <td className="num">
                  {stop.done?.valueN == null ? "" : speech.force(stop.done.valueN, unit)}
                  {stop.done == null && stop.passed != null && <small>{stop.passed.why}</small>}
                </td>
                <td className="num">
                  {onTakeOut !== undefined && stop.done == null && (
                    <Button
                      kind="quiet"
                      aria-label={words.takeOut(stop.name)}
                      onClick={() => onTakeOut(stop.spindleId)}
                    >
                      {words.takeOutShort}
                    </Button>
                  )}
                </td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
