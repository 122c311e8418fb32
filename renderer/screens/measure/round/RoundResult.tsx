import type { RoundView, StopView } from "../../../../app/contract/roundViews.ts";
import { hrefOf } from "../../../state/routeStore.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { roundLeadTexts } from "./texts.ts";
import type { RoundActs } from "./useRoundActs.ts";
import "./round.css";

/** After the last stop: how much was measured, and what was left out, with its reason and the way to measure it yet. */
export function RoundResult({
  round,
  acts,
  onGo,
}: {
  readonly round: RoundView;
  readonly acts: RoundActs;
  readonly onGo: (stop: StopView) => void;
}) {
  const words = useWords(roundLeadTexts);
  const left = round.stops.filter((stop) => stop.done == null);
  return (
    <section className="round-result sheet" aria-labelledby="round-result">
      <small>{round.name}</small>
      <div role="status">
        <h2 id="round-result">{words.resultTitle(round.stops.length - left.length, round.stops.length)}</h2>
      </div>
      {left.length > 0 && (
        <>
          <h3>{words.resultLeft}</h3>
          <ul>
            {left.map((stop) => (
              <li key={stop.spindleId}>
                <span>
                  <b>{stop.name}</b> <small>{stop.area}</small> {stop.retired ? words.retired : stop.passed?.why}
                </span>
                {!stop.retired && <Button onClick={() => onGo(stop)}>{words.measureAfterAll}</Button>}
              </li>
            ))}
          </ul>
        </>
      )}
      <div className="row">
        <Button kind="main" onClick={acts.putAway}>
          {words.endResult}
        </Button>
        <a className="button plain" href={hrefOf({ place: "spindles" })}>
          <span>{words.toSpindles}</span>
        </a>
      </div>
    </section>
  );
}
