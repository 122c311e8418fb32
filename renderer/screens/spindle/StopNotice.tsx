import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindleTexts } from "./texts.ts";

/** A stop stands until someone entitled releases it; said where the spindle is looked at. */
export function StopNotice({ page, onRelease }: { readonly page: SpindlePage; readonly onRelease: () => void }) {
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const since = page.stop?.sinceMs ?? page.row.last?.measuredAtMs ?? 0;
  return (
    <section className="stop-notice">
      <p>
        <b>{words.stopTitle}.</b> {words.stopWhy(speech.date(since))}
      </p>
      <Button onClick={onRelease}>{words.release}</Button>
    </section>
  );
}
