import { type FormEvent, useState } from "react";
import type { BackupView } from "../../../app/contract/backupViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { parseNumber } from "../../words/parseNumber.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { backupTexts } from "./backupTexts.ts";

const ranges = { days: [1, 366], weeks: [0, 520], months: [0, 600] } as const;
type Span = keyof typeof ranges;
const spans = Object.keys(ranges) as Span[]; // an object literal's own keys

/** Where the daily copy goes, and how the last one went. */
export function BackupSection() {
  const backup = useProgram((state) => state.backup);
  return backup === undefined ? null : <BackupForm backup={backup} />;
}

function BackupForm({ backup }: { readonly backup: BackupView }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(backupTexts);
  const demo = useProgram((state) => state.program?.demo === true);
  const [folder, setFolder] = useState(backup.folder ?? "");
  const [keep, setKeep] = useState(() => ({
    days: String(backup.keep.days),
    weeks: String(backup.keep.weeks),
    months: String(backup.keep.months),
  }));
  const wrong = spans.filter((span) => wholeIn(keep[span], span) === undefined);
  const save = (event: FormEvent) => {
    event.preventDefault();
    if (wrong.length > 0) return;
    const counted = (span: Span) => wholeIn(keep[span], span) ?? 0; // none is wrong
    report(
      core.client.call("backup.choose", {
        folder: folder.trim() === "" ? null : folder.trim(),
        keep: { days: counted("days"), weeks: counted("weeks"), months: counted("months") },
      }),
    );
  };
  return (
    <section className="sheet" aria-labelledby="daily-title">
      <h2 id="daily-title">{words.title}</h2>
      <p className="small soft">{words.why}</p>
      <form className="stack" noValidate onSubmit={save}>
        <TextField label={words.folder} hint={words.folderHint} value={folder} onText={setFolder} wide />
        <fieldset className="group">
          <legend>{words.keep}</legend>
          <div className="fields">
            {spans.map((span) => (
              <TextField
                key={span}
                label={words[span]}
                inputMode="numeric"
                value={keep[span]}
                onText={(text) => setKeep({ ...keep, [span]: text })}
                error={wrong.includes(span) ? words.wholeNumber(ranges[span][0], ranges[span][1]) : undefined}
              />
            ))}
          </div>
        </fieldset>
        <div className="row">
          <Button type="submit">{folder.trim() === "" ? words.saveNone : words.save}</Button>
        </div>
      </form>
      <BackupState backup={backup} demo={demo} />
    </section>
  );
}

function BackupState({ backup, demo }: { readonly backup: BackupView; readonly demo: boolean }) {
  const speech = useSpeech();
  const words = useWords(backupTexts);
  const { folder, lastAtMs, verifiedEntries, problem } = backup;
  if (demo) return <p role="status">{words.noneDemo}</p>;
  if (folder === undefined) return <p role="status">{words.none}</p>;
  const when = lastAtMs === undefined ? undefined : speech.dateTime(lastAtMs);
  return (
    <>
      <p role="status">
        {when === undefined
          ? problem === undefined && words.waiting
          : verifiedEntries === undefined
            ? words.last(when)
            : words.lastVerified(when, speech.number(verifiedEntries))}
      </p>
      {problem !== undefined && <Problem>{words.failed(problem)}</Problem>}
    </>
  );
}

function wholeIn(text: string, span: Span): number | undefined {
  const value = parseNumber(text);
  const [low, high] = ranges[span];
  return typeof value === "number" && Number.isInteger(value) && value >= low && value <= high ? value : undefined;
}
