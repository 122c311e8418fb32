import type { Imported, ImportedKind } from "../../../app/contract/importViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { FileField } from "../../ui/field/FileField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { JobLine } from "../records/JobLine.tsx";
import { useJob } from "../records/useJob.ts";
import { ColumnTable } from "./ColumnTable.tsx";
import { NameTable } from "./NameTable.tsx";
import { ProblemList } from "./ProblemList.tsx";
import { Questions } from "./Questions.tsx";
import { TakesNote } from "./TakesNote.tsx";
import { importTexts } from "./texts.ts";
import { useListFile } from "./useListFile.ts";

/** A list from a spreadsheet: chosen, mapped, looked through, and imported whole or not at all. */
export function ImportList({ what, onClose }: { readonly what: ImportedKind; readonly onClose: () => void }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(importTexts);
  const common = useWords(commonTexts);
  const { file, preview, reading, failed, choose, say } = useListFile(what);
  const { job, start, stop, forget } = useJob("listImport", "own");
  const running = job?.state === "running";
  const done = job?.state === "finished" ? (job.result as Imported | null) : undefined; // what `register.import` finishes with
  const open = preview !== undefined && !preview.stopped && !reading && !running && done === undefined;
  const load = () => {
    if (open && file !== undefined) start(core.client.call("register.import", file));
  };
  const stopping = preview?.problems.filter((p) => p.weight === "stops") ?? [];
  const remarks = preview?.problems.filter((p) => p.weight === "tell") ?? [];
  return (
    <Dialog
      wide
      title={words[`title.${what}`]}
      onClose={onClose}
      onSubmit={load}
      acts={
        <>
          {open && (
            <Button kind="main" type="submit">
              {words.importAct(speech.number(preview.ready))}
            </Button>
          )}
          <Button onClick={onClose}>{done === undefined ? common.cancel : common.close}</Button>
        </>
      }
    >
      <p className="why">{words.why}</p>
      {what === "checks" && <p>{words.checksWhy}</p>}
      <FileField
        label={words.file}
        accept=".csv,.tsv,.txt,.xlsx,text/csv"
        onFile={(chosen) => {
          forget();
          choose(chosen);
        }}
      />
      {failed !== undefined && <Problem>{failed}</Problem>}
      {reading && <p role="status">{words.reading}</p>}
      {preview !== undefined && done === undefined && (
        <>
          {preview.columns.length > 0 && (
            <>
              <p role="status">
                {preview.book?.sheet == null
                  ? words.summary(
                      speech.number(preview.rowCount),
                      words[`separator.${preview.separator}`],
                      preview.encoding.toUpperCase(),
                    )
                  : words.bookSummary(speech.number(preview.rowCount), preview.book.sheet)}{" "}
                {preview.passedOver > 0 && words.passedOver(speech.number(preview.passedOver))}
              </p>
              <TakesNote takes={preview.takes} />
              <ColumnTable preview={preview} onMapping={(mapping) => say({ mapping })} />
            </>
          )}
          <Questions file={file} preview={preview} onSay={say} />
          <NameTable names={preview.names} onNames={(names) => say({ names })} />
          <ProblemList title={words.problems} problems={stopping} count={preview.problemCount - remarks.length} />
          <ProblemList title={words.remarks} problems={remarks} count={remarks.length} />
        </>
      )}
      <JobLine job={job} running={words.importing} onStop={stop}>
        {words.done(speech.number(done?.imported ?? 0))}
      </JobLine>
    </Dialog>
  );
}
