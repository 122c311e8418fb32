import type { SupportMade } from "../../../app/contract/supportViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { sizeText } from "../../words/sizeText.ts";
import { JobLine } from "../records/JobLine.tsx";
import { useJob } from "../records/useJob.ts";
import { saveFile } from "../rounds/saveFile.ts";
import { setupTexts } from "./texts.ts";

/** Help from outside: everything is shown before anything can be given away. */
export function SupportSection() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(setupTexts);
  const { job, start, stop } = useJob("support", "own");
  const made = job?.state === "finished" ? (job.result as SupportMade) : undefined; // what the job finishes with
  return (
    <section className="sheet" aria-labelledby="support-title">
      <h2 id="support-title">{words.support}</h2>
      <p className="small soft">{words.supportWhy}</p>
      <div className="row">
        <Button busy={job?.state === "running"} onClick={() => start(core.client.call("support.collect", {}))}>
          {words.supportAct}
        </Button>
        {made !== undefined && <Button onClick={() => saveFile(made.zip)}>{words.supportSave}</Button>}
      </div>
      <JobLine job={job} running={words.supportRunning} onStop={stop}>
        {made !== undefined && words.supportFound}
      </JobLine>
      {made?.files.map(({ name, bytes, text }) => (
        <details key={name} className="support-text">
          <summary>
            {name}
            {" · "}
            <small>{sizeText(bytes, speech)}</small>
          </summary>
          {/* biome-ignore lint/a11y/noNoninteractiveTabindex: long texts scroll, by keyboard too */}
          <pre tabIndex={0}>{text}</pre>
        </details>
      ))}
    </section>
  );
}
