import { useStore } from "zustand";
import type { RejectReason } from "../../../app/gauge/ReadingSink.ts";
import { rejectTexts } from "../../../app/words/recordTexts.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ConnectPanel } from "../link/ConnectPanel.tsx";
import { linkTexts } from "../link/texts.ts";
import { LinkTrouble } from "../measure/live/LinkTrouble.tsx";
import { useReport } from "../shell/useReport.ts";
import { LearnPanel } from "./LearnPanel.tsx";
import { LineTail } from "./LineTail.tsx";
import { setupTexts } from "./texts.ts";

/** The port, what comes through it, and how it is read. */
export function GaugeSection() {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(setupTexts);
  const linkWords = useWords(linkTexts);
  const rejects = useWords(rejectTexts);
  const link = useStore(core.link, (state) => state.link);
  if (link === undefined || link.state === "closed") {
    return (
      <section className="sheet">
        <ConnectPanel />
      </section>
    );
  }
  const { counters } = link;
  const unit = forceUnitOf(link.unit);
  const why = Object.entries(counters.byReason).map(([reason, n]) => `${n} ${rejects[reason as RejectReason]}`); // its own keys
  const facts: readonly (readonly [string, string | undefined])[] = [
    [words.state, link.state === "open" ? linkWords.openNoRate : linkWords[link.state]],
    [words.pattern, link.patternName ?? words.noPattern],
    [words.unit, link.unit],
    [words.rate, link.rateHz === undefined ? undefined : speech.number(link.rateHz, 1)],
    [
      words.resolution,
      link.resolutionN === undefined ? undefined : speech.force(link.resolutionN, unit, link.resolutionN),
    ],
    [words.bytes, speech.number(counters.bytes)],
    [words.lines, speech.number(counters.lines)],
    [words.readings, speech.number(counters.readings)],
    [words.rejected, why.length === 0 ? speech.number(counters.rejected) : `${counters.rejected} (${why.join(", ")})`],
  ];
  const label = link.source?.kind === "simulated" ? linkWords.simulated : link.label;
  return (
    <section className="sheet" aria-labelledby="gauge-title">
      <div className="place">
        <div>
          <h2 id="gauge-title">{words.gaugeAndPort}</h2>
          <p>{words.connectedTo(label)}</p>
        </div>
        <Button onClick={() => report(core.client.call("link.close", {}))}>{linkWords.disconnect}</Button>
      </div>
      <LinkTrouble />
      <dl className="counters">
        {facts
          .filter(([, value]) => value !== undefined)
          .map(([name, value]) => (
            <div key={name}>
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
      {link.spoolTrimmed && <p className="small">{words.spoolTrimmed}</p>}
      <LineTail unit={unit} />
      <LearnPanel unit={unit} gaugeId={link.gaugeId} />
    </section>
  );
}
