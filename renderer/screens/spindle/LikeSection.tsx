import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { useList } from "../../state/useList.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { effectTexts } from "./effectTexts.ts";

/** A spindle beside those of the same taper and nominal force. */
export function LikeSection({ row, unit }: { readonly row: SpindleRow; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(effectTexts);
  const fleet = useList("fleet").rows;
  const { spindleId, taper, limits } = row.spindle;
  const like = fleet?.like.find((one) => one.spindleId === spindleId);
  if (like === undefined || limits.nominalN === undefined) return null;
  const { perYear, medianPerYear } = like;
  const kind = `${taper}, ${speech.force(limits.nominalN, unit, 100)}`;
  return (
    <section className="sheet">
      <h2>{words.likeTitle}</h2>
      <p className="small">
        {words.likeLevel(like.n, kind, speech.percent(like.level), speech.percent(like.medianLevel))}{" "}
        {typeof perYear === "number" &&
          typeof medianPerYear === "number" &&
          words.likeSpeed(speech.percent(perYear, 1), speech.percent(medianPerYear, 1))}{" "}
        {like.standsOut ? <b>{words.likeOut}</b> : words.likeIn}
      </p>
    </section>
  );
}
