import type { JobLoaders } from "./Job.ts";

/** Every job by name, loaded in the worker when it is started. */
export const registry = {
  verify: () => import("./verifyJob.ts"),
  verifyPart: () => import("./verifyPart.ts"),
} satisfies JobLoaders;

export type JobName = keyof typeof registry;
