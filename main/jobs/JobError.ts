import type { StoreFault } from "../store/StoreError.ts";

/** Why a job ended without a result, as a closed list. */
export type JobFault = StoreFault | "stopped" | "badRequest" | "internal";

export class JobError extends Error {
  override name = "JobError";
  readonly code: JobFault;
  constructor(code: JobFault, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
  }
}
