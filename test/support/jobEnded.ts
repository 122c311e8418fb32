import type { JobView } from "../../app/contract/programViews.ts";
import type { CoreInTemp } from "./coreInTemp.ts";

/** How a job ended, as pages hear of it within ten seconds. */
export async function jobEnded(core: CoreInTemp, jobId: string): Promise<JobView> {
  for (let i = 0; i < 500; i += 1) {
    for (const { event, data } of core.pushes)
      if (event === "job.finished" && (data as JobView).jobId === jobId) return data as JobView; // the event says what it carries
    await new Promise((wake) => setTimeout(wake, 20));
  }
  throw new Error("the job did not end");
}
