import type { JobLoaders } from "./Job.ts";

/** Every job by name, loaded in the worker when it is started. */
export const registry = {
  fleet: () => import("./fleetJob.ts"),
  verify: () => import("./verifyJob.ts"),
  verifyPart: () => import("./verifyPart.ts"),
  rejudge: () => import("./rejudgeJob.ts"),
  rejudgePart: () => import("./rejudgePart.ts"),
  affected: () => import("./affectedJob.ts"),
  listPreview: () => import("./listPreviewJob.ts"),
  listImport: () => import("./listImportJob.ts"),
  docking: () => import("./dockingJob.ts"),
  dockingFiling: () => import("./dockingFilingJob.ts"),
  checkpoint: () => import("./checkpointJob.ts"),
  backup: () => import("./backupJob.ts"),
  restore: () => import("./restoreJob.ts"),
  export: () => import("./exportJob.ts"),
  import: () => import("./importJob.ts"),
  report: () => import("./reportJob.ts"),
  person: () => import("./personJob.ts"),
  support: () => import("./supportJob.ts"),
  validate: () => import("./validateJob.ts"),
} satisfies JobLoaders;

export type JobName = keyof typeof registry;
