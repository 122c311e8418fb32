import { useState } from "react";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { HandOver } from "./HandOver.tsx";
import { JobLine } from "./JobLine.tsx";
import { RejudgeSection } from "./RejudgeSection.tsx";
import { RestoreSection } from "./RestoreSection.tsx";
import { recordsTexts } from "./texts.ts";
import { useJob } from "./useJob.ts";
import "../setup/setup.css";

const FOLDER_KEY = "holdfast.backupFolder";

/** Are the records whole, and is there a copy? */
export function Records() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(recordsTexts);
  const dataFile = useProgram((state) => state.program?.dataFile);
  const verify = useJob("verify");
  const backup = useJob("backup");
  const daily = useProgram((state) => state.backup?.folder);
  const [typed, setFolder] = useState(() => localStorage.getItem(FOLDER_KEY) ?? undefined);
  const folder = typed ?? daily ?? "";
  const [tried, setTried] = useState(false);

  // What the two jobs finish with; anything else is shown as plainly done.
  const verified = verify.job?.result as
    | { readonly entries?: number; readonly damaged?: readonly unknown[] }
    | null
    | undefined;
  const copied = backup.job?.result as { readonly file?: string } | null | undefined;
  const copy = () => {
    setTried(true);
    if (folder.trim() === "") return;
    localStorage.setItem(FOLDER_KEY, folder.trim());
    backup.start(core.client.call("records.backup", { folder: folder.trim() }));
  };
  return (
    <div className="stack setup">
      <header className="place">
        <div>
          <h1>{words.title}</h1>
          <p className="why">{words.why}</p>
        </div>
      </header>
      <div className="halves">
        <section className="sheet" aria-labelledby="verify-title">
          <h2 id="verify-title">{words.verify}</h2>
          <p>{words.verifyWhy}</p>
          <div className="row">
            <Button
              kind="main"
              busy={verify.job?.state === "running"}
              onClick={() => verify.start(core.client.call("records.verify", {}))}
            >
              {words.verifyAct}
            </Button>
          </div>
          <JobLine job={verify.job} running={words.verifying} onStop={verify.stop}>
            {verified?.damaged !== undefined && verified.damaged.length > 0 ? (
              <Problem>{words.damagedFound(verified.damaged.length)}</Problem>
            ) : (
              words.whole(speech.number(verified?.entries ?? 0))
            )}
          </JobLine>
        </section>
        <section className="sheet" aria-labelledby="backup-title">
          <h2 id="backup-title">{words.backup}</h2>
          <p>{words.backupWhy}</p>
          <TextField
            label={words.folder}
            hint={words.folderHint}
            value={folder}
            onText={setFolder}
            error={tried && folder.trim() === "" ? words.folderNeeded : undefined}
          />
          <div className="row">
            <Button kind="main" busy={backup.job?.state === "running"} onClick={copy}>
              {words.backupAct}
            </Button>
          </div>
          <JobLine job={backup.job} running={words.copying} onStop={backup.stop}>
            {copied?.file === undefined ? words.copiedPlain : words.copied(copied.file)}
          </JobLine>
          <dl>
            <dt>{words.dataFile}</dt>
            <dd className="path">{dataFile}</dd>
          </dl>
        </section>
      </div>
      <RestoreSection />
      <HandOver />
      <RejudgeSection />
    </div>
  );
}
