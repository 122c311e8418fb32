import type { FleetPlace } from "../../../app/trend/rankFleet.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindlesTexts } from "./texts.ts";
import { whenWords } from "./whenWords.ts";

const WIDTH = 150;
const YEARS = 3;
const YEAR_MS = 365.25 * 86_400_000;

/** When a limit is reached, as a bar on three years from now; its words beside it say the same. */
export function WhenBar({ forecast }: { readonly forecast: FleetPlace["forecast"] }) {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const now = Date.now();
  const x = (ms: number) => 4 + (WIDTH - 8) * Math.min(1, Math.max(0, (ms - now) / (YEARS * YEAR_MS)));
  const low = forecast.state === "already" ? 4 : x(forecast.lowMs ?? forecast.atMs ?? Number.POSITIVE_INFINITY);
  const high = forecast.state === "already" ? 11 : x(forecast.highMs ?? Number.POSITIVE_INFINITY);
  const drawn = forecast.state === "already" || (forecast.state === "crosses" && low < WIDTH - 8);
  return (
    <div className="when">
      {(forecast.state === "crosses" || drawn) && (
        <svg width={WIDTH} height="16" viewBox={`0 0 ${WIDTH} 16`} aria-hidden="true">
          <line className="axis" x1="4" x2={WIDTH - 4} y1="8" y2="8" />
          {[0, 1, 2, 3].map((year) => (
            <line
              key={year}
              className="tick"
              x1={4 + ((WIDTH - 8) * year) / YEARS}
              x2={4 + ((WIDTH - 8) * year) / YEARS}
              y1="4"
              y2="12"
            />
          ))}
          {drawn && <rect x={low} y="3" width={Math.max(7, high - low)} height="10" rx="2" />}
        </svg>
      )}
      <small>
        {forecast.state === "crosses" || forecast.state === "already"
          ? (forecast.limit === "warning" ? words.atWarning : words.atMinimum)(whenWords(forecast, words, speech, now))
          : whenWords(forecast, words, speech, now)}
      </small>
    </div>
  );
}
