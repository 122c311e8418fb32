import type { ReactNode } from "react";
import type { JobView } from "../../../app/contract/programViews.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { Progress } from "../../ui/feedback/Progress.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { recordsTexts } from "./texts.ts";

/** How long work stands: its progress, or how it ended. */
export function JobLine({
  job,
  running,
  onStop,
  children,
}: {
  readonly job: JobView | undefined;
  readonly running: string;
  readonly onStop: () => void;
  /** What it found, once it is done. */
  readonly children: ReactNode;
}) {
  const words = useWords(recordsTexts);
  if (job === undefined) return null;
  if (job.state === "running") {
    return (
      <Progress
        label={running}
        done={job.done}
        total={job.total}
        act={<Button onClick={onStop}>{words.stop}</Button>}
      />
    );
  }
  if (job.state === "failed") return <Problem>{job.message}</Problem>;
  return <div role="status">{job.state === "stopped" ? words.stopped : children}</div>;
}
