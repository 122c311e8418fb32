import { useState } from "react";
import { useStore } from "zustand";
import type { JobView } from "../../../app/contract/programViews.ts";
import type { Result } from "../../../app/contract/result.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useReport } from "../shell/useReport.ts";

/**
 * One piece of long work: how it is started, how far it is, and how it is ended.
 * @param how  `found`: the last work of this kind is shown, whoever started it; `own`: only what is started from here
 */
export function useJob(
  what: string,
  how: "found" | "own" = "found",
): {
  readonly job: JobView | undefined;
  readonly start: (answer: Promise<Result<{ readonly jobId: string }>>) => Promise<void>;
  readonly stop: () => void;
  /** Back to where nothing has been started from here. */
  readonly forget: () => void;
} {
  const core = useCore();
  const report = useReport();
  const [mine, setMine] = useState<string>();
  const job = useStore(core.jobs, ({ jobs }) =>
    mine === undefined && how === "found" ? Object.values(jobs).findLast((one) => one.what === what) : jobs[mine ?? ""],
  );
  return {
    job,
    start: async (answer) => {
      const started = await report(answer);
      if (started !== undefined) setMine(started.jobId);
    },
    forget: () => setMine(undefined),
    stop: () => {
      if (job !== undefined) report(core.client.call("job.stop", { jobId: job.jobId }));
    },
  };
}
