import type { FleetView, SpindleRow } from "../../../app/contract/recordViews.ts";
import { likeWords } from "../../../app/words/likeWords.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { capital } from "../../words/capital.ts";
import { whyWords } from "../../words/records/whyWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindlesTexts } from "./texts.ts";

/** What a colleague would say first: the spindle to see to, and how many more. */
export function FleetSentence({
  rows,
  fleet,
  worksUnit,
}: {
  readonly rows: readonly SpindleRow[];
  readonly fleet: FleetView | undefined;
  readonly worksUnit: string;
}) {
  const speech = useSpeech();
  const words = useWords(spindlesTexts);
  const verdictWords = useWords(verdictTexts);
  const first = rows[0];
  if (first === undefined || rows.every((row) => row.last === undefined))
    return <p className="why">{words.noneMeasured}</p>;
  const rest = rows.slice(1);
  const acts = rest.filter((row) => row.verdict === "stop" || row.verdict === "act").length;
  const watches = rest.filter((row) => row.verdict === "watch").length;
  if (first.verdict === "good" && acts + watches === 0) return <p className="why">{words.allGood}</p>;
  const unit = forceUnitOf(first.spindle.unitShown ?? worksUnit);
  const like = likeWords(
    fleet?.like.find((one) => one.spindleId === first.spindle.spindleId),
    speech,
  );
  return (
    <p className="why">
      <b>{words.worst(first.spindle.name)}</b>{" "}
      {words.worstWhy(verdictWords[first.verdict ?? "never"], whyWords(first, speech, unit))}
      {like !== undefined && ` ${capital(like, speech)}.`}
      {acts > 0 && ` ${words.othersAct(acts)}`}
      {watches > 0 && ` ${words.othersWatch(watches)}`}
    </p>
  );
}
