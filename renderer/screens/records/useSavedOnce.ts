import { useEffect, useRef } from "react";
import type { JobView } from "../../../app/contract/programViews.ts";
import type { MadeFile } from "../../../app/contract/roundViews.ts";
import { saveFile } from "../rounds/saveFile.ts";

/** Hands a report over when its job ends while the page is open; one that had ended before is not handed over again. */
export function useSavedOnce(job: JobView | undefined): void {
  const ended = job?.state === "finished" ? job.jobId : undefined;
  const seen = useRef(ended);
  const file = job?.result as MadeFile | null | undefined; // what a report's job finishes with
  useEffect(() => {
    if (ended === undefined || ended === seen.current || file == null) return;
    seen.current = ended;
    saveFile(file);
  }, [ended, file]);
}
