import { useState } from "react";
import type { BackupRow, RestoreTried } from "../../../app/contract/backupViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { sizeText } from "../../words/sizeText.ts";
import { useReport } from "../shell/useReport.ts";
import { JobLine } from "./JobLine.tsx";
import { RestoreCompared } from "./RestoreCompared.tsx";
import { restoreTexts } from "./restoreTexts.ts";
import { useJob } from "./useJob.ts";

/** The way back from a copy: chosen, restored beside, compared, and only then put in place. */
export function RestoreSection() {
  const core = useCore();
  const report = useReport();
  const words = useWords(restoreTexts);
  const kept = useProgram((state) => state.program?.keptFile);
  const chosen = useProgram((state) => state.backup?.folder);
  const { job, start, stop, forget } = useJob("restore", "own");
  const [folder, setFolder] = useState<string>();
  const [file, setFile] = useState("");
  const [rows, setRows] = useState<readonly BackupRow[]>();
  const where = folder ?? chosen ?? "";
  const tried = job?.state === "finished" ? (job.result as RestoreTried) : undefined; // what the job finishes with
  const look = async () => setRows(await report(core.client.call("backup.list", { folder: where.trim() })));
  const compare = (path: string) => start(core.client.call("restore.try", { file: path }));
  return (
    <section className="sheet" aria-labelledby="restore-title">
      <h2 id="restore-title">{words.title}</h2>
      <p>{words.why}</p>
      {kept !== undefined && kept !== null && (
        <p role="status" className="path">
          {words.kept(kept)}
        </p>
      )}
      <TextField label={words.folder} value={where} onText={setFolder} wide />
      <div className="row">
        <Button disabled={where.trim() === ""} onClick={look}>
          {words.look}
        </Button>
      </div>
      {rows !== undefined && <Copies rows={rows} onChoose={compare} />}
      <TextField label={words.file} hint={words.fileHint} value={file} onText={setFile} wide />
      <div className="row">
        <Button disabled={file.trim() === ""} onClick={() => compare(file.trim())}>
          {words.compare}
        </Button>
      </div>
      <JobLine job={job} running={words.comparing} onStop={stop}>
        {tried !== undefined && <RestoreCompared tried={tried} onLeave={forget} />}
      </JobLine>
    </section>
  );
}

/** More are never looked through by eye. */
const SHOWN = 40;

function Copies({
  rows,
  onChoose,
}: {
  readonly rows: readonly BackupRow[];
  readonly onChoose: (file: string) => void;
}) {
  const speech = useSpeech();
  const words = useWords(restoreTexts);
  if (rows.length === 0) return <p role="status">{words.noneThere}</p>;
  return (
    <ul className="plain-list">
      {rows.slice(0, SHOWN).map(({ file, atMs, bytes, own }) => (
        <li key={file} className="row">
          <b>{speech.dateTime(atMs)}</b>
          <small>
            {sizeText(bytes, speech)}
            {!own && ` · ${words.otherWorks}`}
          </small>
          <Button kind="quiet" aria-label={`${words.compare}: ${speech.dateTime(atMs)}`} onClick={() => onChoose(file)}>
            {words.compare}
          </Button>
        </li>
      ))}
    </ul>
  );
}
