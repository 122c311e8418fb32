import { type ReactNode, useRef, useState } from "react";
import { useStore } from "zustand";
import type { Result } from "../../../app/contract/result.ts";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Progress } from "../../ui/feedback/Progress.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { dockTexts } from "./texts.ts";

/**
 * Reading a memory, which takes seconds when it is full: how far it is, and a way to stop it. What was shown before stays
 * when it is stopped.
 */
export function useReading(onRead: (view: DockingView) => void): {
  readonly busy: boolean;
  readonly line: ReactNode;
  readonly take: (ask: () => Promise<Result<DockingView>>) => Promise<DockingView | undefined>;
} {
  const core = useCore();
  const report = useReport();
  const words = useWords(dockTexts);
  const [busy, setBusy] = useState(false);
  /** Jobs that were there before this reading: one of another page is not ours to stop. */
  const others = useRef<ReadonlySet<string>>(new Set());
  const job = useStore(core.jobs, ({ jobs }) =>
    Object.values(jobs).findLast(
      (one) => one.what === "docking" && one.state === "running" && !others.current.has(one.jobId),
    ),
  );
  const take = async (ask: () => Promise<Result<DockingView>>) => {
    others.current = new Set(Object.keys(core.jobs.getState().jobs));
    setBusy(true);
    const view = await report(ask());
    setBusy(false);
    if (view !== undefined) onRead(view);
    return view;
  };
  const stop = () => job && report(core.client.call("job.stop", { jobId: job.jobId }));
  const line =
    job === undefined ? (
      <p role="status">{words.reading}</p>
    ) : (
      <Progress
        label={words.reading}
        done={job.done}
        total={job.total}
        act={<Button onClick={stop}>{words.stopReading}</Button>}
      />
    );
  return { busy, line: busy ? line : undefined, take };
}
