import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { handOverTexts } from "./handOverTexts.ts";
import { JobLine } from "./JobLine.tsx";
import { useJob } from "./useJob.ts";
import { useSavedOnce } from "./useSavedOnce.ts";
import { usualPaper } from "./usualPaper.ts";

type Of =
  | { readonly what: "check"; readonly checkId: string }
  | { readonly what: "spindle"; readonly spindleId: string }
  | { readonly what: "round"; readonly roundId: string }
  | { readonly what: "proof"; readonly proofId: string };

/** A button that makes a report and hands it over. */
export function ReportAct({ of }: { readonly of: Of }) {
  const core = useCore();
  const words = useWords(handOverTexts);
  const { language } = useSpeech();
  const { job, start, stop } = useJob("report", "own");
  useSavedOnce(job);
  const isRunning = job?.state === "running";
  return (
    <>
      <Button
        icon="report"
        busy={isRunning}
        onClick={() => start(core.client.call("reports.make", { ...of, paper: usualPaper(), language }))}
      >
        {words.reportAct}
      </Button>
      {(isRunning || job?.state === "failed") && (
        <JobLine job={job} running={words.summing} onStop={stop}>
          {null}
        </JobLine>
      )}
    </>
  );
}
