import { z } from "zod";

/** How many days, weeks and months back one backup each is kept. */
export const generations = z.strictObject({
  days: z.number().int().min(1).max(366),
  weeks: z.number().int().min(0).max(520),
  months: z.number().int().min(0).max(600),
});
export type Generations = z.infer<typeof generations>;

/** How the daily backup stands, as every page sees it. */
export type BackupView = {
  /** Undefined: none chosen. */
  readonly folder: string | undefined;
  readonly keep: Generations;
  /** When the newest backup in the folder was made; undefined: none there, or the folder cannot be seen. */
  readonly lastAtMs: number | undefined;
  /** Entries that were walked in the last one made here; undefined before the first. */
  readonly verifiedEntries: number | undefined;
  /** Why the last try failed; gone when one succeeds. It is tried again by itself. */
  readonly problem: string | undefined;
  /** What is worth a line over every screen: nobody chose a folder in a week, or there is none of the last days. */
  readonly late: "noFolder" | "overdue" | undefined;
};

/** A backup in a folder. */
export type BackupRow = {
  readonly file: string;
  readonly atMs: number;
  readonly bytes: number;
  /** Whether it was made of the data file that is open, by the first digits of its chain. */
  readonly own: boolean;
};

/** One chain of the open file beside the same in a backup. */
export type ChainBeside = {
  readonly origin: string;
  readonly here: number;
  readonly there: number;
  /** Both are the same so far. */
  readonly same: number;
};

/** What `restore.try` finishes with: the backup at a new place, and what would change if it took the data file's. */
export type RestoreTried = {
  /** Where the backup lies now, ready to be swapped in. */
  readonly file: string;
  readonly from: string;
  readonly entries: number;
  readonly waveforms: number;
  readonly chains: readonly ChainBeside[];
  /** Entries of the open file that the backup does not hold; undefined when the open file cannot be read so far. */
  readonly lost: number | undefined;
  readonly lostChecks: number | undefined;
  /** When the newest entry of the backup was filed. */
  readonly newestAt: string | undefined;
};

export type Swapped = {
  /** Where the file lies that was in use before. */
  readonly kept: string;
};
