import { z } from "zod";
import type { Works } from "../ledger/register.ts";
import type { BackupView } from "./backupViews.ts";
import type { LinkView } from "./linkViews.ts";
import type { Draft, LiveView } from "./seriesViews.ts";

/** Settings of this PC; none of them affects a verdict. */
export const pcSettings = z.strictObject({
  theme: z.enum(["system", "light", "dark"]),
  language: z.enum(["system", "en", "de"]),
  sound: z.boolean(),
  /** People are shown by their initials. */
  initials: z.boolean(),
  /** How far the tour of the demo has come; absent: never begun. */
  tour: z
    .strictObject({ step: z.number().int().min(0).max(99), state: z.enum(["running", "paused", "done"]) })
    .optional(),
});
export type PcSettings = z.infer<typeof pcSettings>;

export type ProgramView = {
  readonly version: string;
  readonly demo: boolean;
  readonly dataFile: string;
  /** The chain that is written on; another one means another file is open under this name. */
  readonly origin: string | undefined;
  /** After a restore: where the file lies that was in use before. */
  readonly keptFile: string | undefined;
  /** Why nothing can be written just now, in words. */
  readonly readOnly: string | undefined;
  /** The records are damaged: an export writes what can be read, a copy can take their place. */
  readonly damaged: boolean;
  /** True when no spindle exists yet: the page leads by the hand. */
  readonly empty: boolean;
  readonly host: "electron" | "loopback";
};

export type JobView = {
  readonly jobId: string;
  readonly what: string;
  readonly done: number;
  readonly total: number | undefined;
  readonly state: "running" | "finished" | "stopped" | "failed";
  readonly message: string | undefined;
  readonly result: unknown;
};

export type Snapshot = {
  /** The number of the last push this snapshot already holds. */
  readonly seq: number;
  readonly program: ProgramView;
  readonly works: Works;
  readonly settings: PcSettings;
  readonly link: LinkView;
  readonly live: LiveView;
  readonly draft: Draft;
  /** The check that one act can still take back. */
  readonly undo: { readonly checkId: string; readonly untilMs: number } | undefined;
  readonly jobs: readonly JobView[];
  readonly backup: BackupView;
};
