import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { ServiceEvent } from "../../../app/ledger/register.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import type { ServiceEffect } from "../../../app/trend/serviceEffects.ts";
import { serviceTexts } from "../../../app/words/recordTexts.ts";
import { capital } from "../../words/capital.ts";
import type { Speech } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { effectTexts } from "./effectTexts.ts";
import { spindleTexts } from "./texts.ts";

/** What each service did to the force: before and after, newest first. */
export function ServiceEffects({ page, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(effectTexts);
  const pageWords = useWords(spindleTexts);
  const kinds = useWords(serviceTexts);
  if (page.events.length === 0) return null;
  const effects = new Map(page.trend.services.map((effect) => [effect.eventId, effect]));
  const lastMs = page.row.last?.measuredAtMs ?? Number.NEGATIVE_INFINITY;
  return (
    <section className="sheet">
      <h2>{pageWords.services}</h2>
      <ul className="hints">
        {page.events
          .toSorted((a, b) => (a.at < b.at ? 1 : -1))
          .map((event) => (
            <li key={event.eventId}>
              <b>{`${speech.plainDate(event.at)}: ${kinds[event.kind]}`}</b>
              <small>{outcome(event, effects.get(event.eventId), lastMs)}</small>
              {aboutOf(event) !== "" && <small>{aboutOf(event)}</small>}
            </li>
          ))}
      </ul>
    </section>
  );

  function outcome(event: ServiceEvent, effect: ServiceEffect | undefined, newestMs: number): string {
    if (effect !== undefined) return capital(effectWords(effect, speech, unit), speech);
    return Date.parse(event.at) > newestMs ? words.afterNext : words.notCompared;
  }
}

const aboutOf = ({ parts, note }: ServiceEvent) =>
  [parts, note].filter((text) => typeof text === "string" && text !== "").join(" · ");

/** "17.20 → 18.05 kN: rose by 0.85 kN (0.60 to 1.10); scatter within checks 0.4 times": what one service did. */
function effectWords(effect: ServiceEffect, speech: Speech, unit: ForceUnit): string {
  const words = effectTexts[speech.language];
  const { changeN, lowN, highN, scatterRatio } = effect;
  const change = speech.force(Math.abs(changeN), unit);
  const judged = {
    rose: words.rose(change),
    fell: words.fell(change),
    unchanged: words.unchanged,
    cannotTell: words.cannotTell,
  }[effect.judged];
  const figure = (forceN: number) => speech.forceFigure(forceN, unit);
  const interval =
    typeof lowN === "number" && typeof highN === "number"
      ? words.interval(figure(lowN), speech.force(highN, unit))
      : "";
  const scatter = typeof scatterRatio === "number" ? words.scatter(speech.number(scatterRatio, 1)) : "";
  const tools = effect.otherGauge || effect.otherAdapter ? words.otherTools : "";
  return `${words.beforeAfter(figure(effect.beforeN), speech.force(effect.afterN, unit))}: ${judged}${interval}${scatter}${tools}.`;
}
