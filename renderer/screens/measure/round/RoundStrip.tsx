import type { RoundView } from "../../../../app/contract/roundViews.ts";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { changeSeries } from "../acts.ts";
import { roundLeadTexts } from "./texts.ts";
import type { RoundActs } from "./useRoundActs.ts";
import { walkOf } from "./walkOf.ts";
import "./round.css";

/** Where the round stands: the machine one should be at now, in great letters, how far one is, and the ways on. */
export function RoundStrip({
  round,
  draft,
  unit,
  acts,
}: {
  readonly round: RoundView;
  readonly draft: Draft;
  readonly unit: ForceUnit;
  readonly acts: RoundActs;
}) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(roundLeadTexts);
  const walk = walkOf(round, draft.tag.spindleId);
  const { at, next } = walk;
  const counts = [
    words.progress(walk.done, round.stops.length),
    walk.putOff > 0 ? words.putOff(walk.putOff) : undefined,
    walk.leftOut > 0 ? words.leftOut(walk.leftOut) : undefined,
  ].filter((part) => part !== undefined);
  return (
    <section className="round-lead sheet" aria-label={words.round}>
      <div className="round-far">
        <small>{round.name}</small>
        <progress aria-label={counts.join(", ")} value={walk.done} max={round.stops.length} />
        <small>{counts.join(" · ")}</small>
      </div>
      <div className="round-at" role="status">
        {at === undefined ? (
          <b>{words.notOfRound}</b>
        ) : (
          <>
            <small>{words.stop(walk.place)}</small>
            <b>{at.name}</b>
            <small>
              {[
                at.machine === at.name ? undefined : at.machine,
                at.area,
                at.taper,
                at.expectedN == null ? undefined : words.expected(speech.force(at.expectedN, unit, 100)),
                at.done == null ? undefined : words.already,
                at.done != null || at.passed == null
                  ? undefined
                  : (at.passed.as === "later" ? words.back : words.was)(at.passed.why),
              ]
                .filter((part) => part !== undefined && part !== "")
                .join(" · ")}
            </small>
          </>
        )}
      </div>
      <div className="round-ways">
        <small>
          {next === undefined
            ? words.last
            : (next.adapterId === draft.tag.adapterId ? words.next : words.nextChange)(next.name)}
        </small>
        <div className="row">
          {at === undefined && next !== undefined && (
            <Button onClick={() => report(changeSeries(core, "series.tag", { spindleId: next.spindleId }))}>
              {words.backToRound(next.name)}
            </Button>
          )}
          {at !== undefined && (
            <>
              <Button keyHint="L" onClick={() => acts.ask("later")}>
                {words.later}
              </Button>
              <Button keyHint="X" onClick={() => acts.ask("leftOut")}>
                {words.leaveOut}
              </Button>
            </>
          )}
          <Button keyHint="P" onClick={() => acts.ask("stops")}>
            {words.stops}
          </Button>
        </div>
      </div>
    </section>
  );
}
