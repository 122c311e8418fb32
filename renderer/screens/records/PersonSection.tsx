import { useState } from "react";
import type { PersonExported } from "../../../app/contract/reportViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { handOverTexts } from "./handOverTexts.ts";
import { JobLine } from "./JobLine.tsx";
import { personTexts } from "./personTexts.ts";
import { useJob } from "./useJob.ts";

/** One person's entries, for whoever asks what is filed of them. */
export function PersonSection() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(personTexts);
  const common = useWords(handOverTexts);
  const people = useList("operators").rows ?? [];
  const { job, start, stop } = useJob("person", "own");
  const [chosen, setChosen] = useState<string>();
  const [folder, setFolder] = useState("");
  const [tried, setTried] = useState(false);
  const operatorId = chosen ?? people[0]?.operatorId;
  const made = job?.result as PersonExported | null | undefined; // what the job finishes with
  const go = () => {
    setTried(true);
    if (operatorId !== undefined && folder.trim() !== "")
      start(core.client.call("people.export", { operatorId, folder: folder.trim() }));
  };
  return (
    <section className="sheet" aria-labelledby="person-title">
      <h2 id="person-title">{words.title}</h2>
      <p>{words.why}</p>
      {operatorId === undefined ? (
        <p role="status">{words.none}</p>
      ) : (
        <>
          <SelectField
            label={words.who}
            value={operatorId}
            options={people.map((one) => ({ value: one.operatorId, label: one.name }))}
            onChoose={setChosen}
          />
          <TextField
            label={words.folder}
            hint={common.folderHint}
            value={folder}
            onText={setFolder}
            error={tried && folder.trim() === "" ? common.folderNeeded : undefined}
          />
          <div className="row">
            <Button busy={job?.state === "running"} onClick={go}>
              {words.act}
            </Button>
          </div>
          <JobLine job={job} running={words.running} onStop={stop}>
            {made?.file !== undefined && words.done(speech.number(made.entries), made.file)}
          </JobLine>
        </>
      )}
    </section>
  );
}
