import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindlesTexts } from "./texts.ts";

const WIDTH = 116;
const HEIGHT = 38;
/** One scale for all lines, so that they can be compared down the list; what lies beyond stands at the edge. */
const LOW = 0.72;
const HIGH = 1.08;

const y = (share: number) => 4 + (HEIGHT - 8) * (1 - (Math.min(HIGH, Math.max(LOW, share)) - LOW) / (HIGH - LOW));

/** A spindle's last values as shares of its baseline, over the warning limit. */
export function Spark({ row }: { readonly row: SpindleRow }) {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const { spark, baselineN, spindle } = row;
  const first = spark[0];
  const last = spark.at(-1);
  if (first === undefined || last === undefined) return null;
  const x = (i: number) => (spark.length === 1 ? WIDTH - 5 : 3 + ((WIDTH - 8) * i) / (spark.length - 1));
  const limitN = spindle.limits.warningN ?? spindle.limits.minimumN;
  const limit = limitN === undefined || baselineN === undefined ? undefined : y(limitN / baselineN);
  const path = spark.map((share, i) => `${i === 0 ? "M" : "L"}${x(i).toFixed(1)} ${y(share).toFixed(1)}`).join("");
  return (
    <svg
      className="spark"
      width={WIDTH}
      height={HEIGHT}
      viewBox={`0 0 ${WIDTH} ${HEIGHT}`}
      role="img"
      aria-label={words.sparkAbout(speech.percent(first), speech.percent(last))}
    >
      {limit !== undefined && <line x1="0" x2={WIDTH} y1={limit} y2={limit} />}
      <path d={path} />
      <circle cx={x(spark.length - 1)} cy={y(last)} r="3.4" />
    </svg>
  );
}
