import type { JobFault } from "./JobError.ts";

/** What a worker is started with. */
export type JobOrder = {
  readonly name: string;
  readonly args: unknown;
  readonly path: string;
  readonly demo: boolean;
  /** One 32-bit number: 1 when the job is to end. Shared, since a busy worker reads no messages. */
  readonly stop: SharedArrayBuffer;
};

/** What a worker says. The last message is `done` or `failed`. */
export type JobMessage =
  | { readonly say: "progress"; readonly done: number; readonly total: number | undefined }
  | { readonly say: "done"; readonly result: unknown }
  | { readonly say: "failed"; readonly code: JobFault; readonly message: string; readonly trace: string };
