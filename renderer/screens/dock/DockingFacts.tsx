import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { KnownInDoubt } from "./KnownInDoubt.tsx";
import { dockTexts } from "./texts.ts";

const SECONDS_A_DAY_PER_PPM = 0.0864;

/** What was read: how much of it is new, whether all of it came, and how the gauge's clock stands. */
export function DockingFacts({
  view,
  onRead,
}: {
  readonly view: DockingView;
  readonly onRead: (view: DockingView) => void;
}) {
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const { clock, lines, takes, known } = view;
  if (takes.length === 0)
    return (
      <section className="facts">
        <p role="status">{known > 0 ? words.nothingNew : words.nothingThere}</p>
        {view.doubtful && <KnownInDoubt view={view} onRead={onRead} />}
      </section>
    );
  const badDates = takes.filter((take) => take.badDate);
  const announced = lines.announced == null ? words.unknownCount : speech.number(lines.announced);
  return (
    <section className="facts" role="status">
      <p>{words.readCount(takes.length, known)}</p>
      {lines.incomplete && <p className="loud">{words.incomplete(takes.length + known, announced)}</p>}
      {badDates.length > 0 && <p className="loud">{words.badDates(badDates.length, badDates[0]!.stamp ?? "")}</p>}
      {view.doubtful && <KnownInDoubt view={view} onRead={onRead} />}
      {clock != null && (
        <p className="soft">
          {clock.assumed
            ? words.clockAssumed
            : (clock.offsetMs >= 0 ? words.clockAhead : words.clockBehind)(
                span(Math.abs(clock.offsetMs), speech.number),
              )}{" "}
          {clock.driftPpm != null &&
            (clock.driftPpm >= 0 ? words.gains : words.loses)(
              speech.number(Math.abs(clock.driftPpm) * SECONDS_A_DAY_PER_PPM, 1),
            )}{" "}
          {clock.setSince && words.setSince}
        </p>
      )}
    </section>
  );
}

/** "2 h 5 min", "12 s", "31 d 4 h": the two greatest parts. */
function span(ms: number, number: (value: number) => string): string {
  const seconds = Math.round(ms / 1000);
  const parts = [
    [Math.floor(seconds / 86_400), "d"],
    [Math.floor(seconds / 3_600) % 24, "h"],
    [Math.floor(seconds / 60) % 60, "min"],
    [seconds % 60, "s"],
  ] as const;
  const first = parts.findIndex(([n]) => n > 0);
  const shown = parts.slice(Math.max(0, first < 0 ? 3 : first)).slice(0, 2);
  return shown.map(([n, unit]) => `${number(n)} ${unit}`).join(" ");
}
