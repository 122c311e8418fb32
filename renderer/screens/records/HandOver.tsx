import { useState } from "react";
import type { ArchiveMade, ArchiveTaken, ValidationMade } from "../../../app/contract/reportViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { DateField } from "../../ui/field/DateField.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ImportList } from "../importList/ImportList.tsx";
import { importTexts } from "../importList/texts.ts";
import { saveFile } from "../rounds/saveFile.ts";
import { handOverTexts } from "./handOverTexts.ts";
import { JobLine } from "./JobLine.tsx";
import { PersonSection } from "./PersonSection.tsx";
import { useJob } from "./useJob.ts";
import { useSavedOnce } from "./useSavedOnce.ts";
import { usualPaper } from "./usualPaper.ts";

type Paper = "A4" | "Letter";

/** Records out and in again as archives, on paper, and the program's own proof. */
export function HandOver() {
  const [paper, setPaper] = useState<Paper>(usualPaper);
  return (
    <div className="halves">
      <ExportSection />
      <ImportSection />
      <PersonSection />
      <SummarySection paper={paper} onPaper={setPaper} />
      <ValidateSection paper={paper} />
    </div>
  );
}

function ExportSection() {
  const core = useCore();
  const speech = useSpeech();
  const damaged = useProgram((state) => state.program?.damaged === true);
  const words = useWords(handOverTexts);
  const { job, start, stop } = useJob("export");
  const [folder, setFolder] = useState("");
  const [waveforms, setWaveforms] = useState(true);
  const [tried, setTried] = useState(false);
  const made = job?.result as ArchiveMade | null | undefined; // what the job finishes with
  const go = () => {
    setTried(true);
    if (folder.trim() !== "") start(core.client.call("records.export", { folder: folder.trim(), waveforms }));
  };
  return (
    <section className="sheet" aria-labelledby="export-title">
      <h2 id="export-title">{words.export}</h2>
      <p>{words.exportWhy}</p>
      {damaged && <Problem>{words.exportDamaged}</Problem>}
      <TextField
        label={words.exportFolder}
        hint={words.folderHint}
        value={folder}
        onText={setFolder}
        error={tried && folder.trim() === "" ? words.folderNeeded : undefined}
      />
      <Tick checked={waveforms} onTick={setWaveforms}>
        {words.withReadings}
      </Tick>
      <div className="row">
        <Button busy={job?.state === "running"} onClick={go}>
          {words.exportAct}
        </Button>
      </div>
      <JobLine job={job} running={words.exporting} onStop={stop}>
        {made?.file !== undefined && (
          <>
            <p>{words.exported(speech.number(made.entries), made.file)}</p>
            {made.leftOut > 0 && <Problem>{words.leftOut(speech.number(made.leftOut))}</Problem>}
          </>
        )}
      </JobLine>
    </section>
  );
}

function ImportSection() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(handOverTexts);
  const { "act.checks": oldAct } = useWords(importTexts);
  const { job, start, stop } = useJob("import");
  const [isOld, setOld] = useState(false);
  const [file, setFile] = useState("");
  const [tried, setTried] = useState(false);
  const taken = job?.result as ArchiveTaken | null | undefined; // what the job finishes with
  const go = () => {
    setTried(true);
    if (file.trim() !== "") start(core.client.call("records.import", { file: file.trim() }));
  };
  return (
    <section className="sheet" aria-labelledby="import-title">
      <h2 id="import-title">{words.import}</h2>
      <p>{words.importWhy}</p>
      <TextField
        label={words.importFile}
        hint={words.importHint}
        value={file}
        onText={setFile}
        error={tried && file.trim() === "" ? words.fileNeeded : undefined}
      />
      <div className="row">
        <Button busy={job?.state === "running"} onClick={go}>
          {words.importAct}
        </Button>
        <Button onClick={() => setOld(true)}>{oldAct}</Button>
      </div>
      {isOld && <ImportList what="checks" onClose={() => setOld(false)} />}
      <JobLine job={job} running={words.importing} onStop={stop}>
        {taken?.file !== undefined && words.imported(speech.number(taken.added), speech.number(taken.entries))}
      </JobLine>
    </section>
  );
}

function SummarySection({ paper, onPaper }: { readonly paper: Paper; readonly onPaper: (paper: Paper) => void }) {
  const core = useCore();
  const words = useWords(handOverTexts);
  const { language } = useSpeech();
  const { job, start, stop } = useJob("report");
  const [since, setSince] = useState("");
  useSavedOnce(job);
  const order = { what: "works", paper, language, ...(since === "" ? {} : { since }) } as const;
  return (
    <section className="sheet" aria-labelledby="summary-title">
      <h2 id="summary-title">{words.summary}</h2>
      <p>{words.summaryWhy}</p>
      <DateField label={words.since} hint={words.sinceHint} value={since} onText={setSince} />
      <SelectField
        label={words.paper}
        value={paper}
        options={[
          { value: "A4", label: "A4" },
          { value: "Letter", label: "Letter" },
        ]}
        onChoose={onPaper}
      />
      <div className="row">
        <Button busy={job?.state === "running"} onClick={() => start(core.client.call("reports.make", order))}>
          {words.summaryAct}
        </Button>
      </div>
      <JobLine job={job} running={words.summing} onStop={stop}>
        {words.saved}
      </JobLine>
      <p>{words.notAccredited}</p>
    </section>
  );
}

function ValidateSection({ paper }: { readonly paper: Paper }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(handOverTexts);
  const { job, start, stop } = useJob("validate");
  const found = job?.state === "finished" ? (job.result as ValidationMade | null | undefined) : undefined; // what the job finishes with
  return (
    <section className="sheet" aria-labelledby="validate-title">
      <h2 id="validate-title">{words.validate}</h2>
      <p>{words.validateWhy}</p>
      <div className="row">
        <Button
          busy={job?.state === "running"}
          onClick={() => start(core.client.call("program.validate", { paper, language: speech.language }))}
        >
          {words.validateAct}
        </Button>
        {found != null && <Button onClick={() => saveFile(found.report)}>{words.reportAct}</Button>}
      </div>
      <JobLine job={job} running={words.validating} onStop={stop}>
        {found != null &&
          (found.failed.length === 0 ? (
            words.validated(speech.number(found.cases.length))
          ) : (
            <Problem>{words.notValidated(found.failed.length, found.cases.length)}</Problem>
          ))}
      </JobLine>
      {found?.programHash != null && (
        <dl>
          <dt>{words.programHash}</dt>
          <dd className="path">{found.programHash}</dd>
        </dl>
      )}
    </section>
  );
}
