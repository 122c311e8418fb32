import type { BackupView, Generations } from "../../app/contract/backupViews.ts";
import type { Clock } from "../link/Clock.ts";
import type { Log } from "../log.ts";
import { type Db, prepared } from "../store/db.ts";
import type { Store } from "../store/Store.ts";
import { type BackupChoice, DailyBackup } from "./DailyBackup.ts";
import { everyMinute } from "./everyMinute.ts";
import { IdleVerify } from "./IdleVerify.ts";
import type { Jobs } from "./Jobs.ts";

export type UpkeepOptions = {
  readonly store: Store;
  readonly jobs: Jobs;
  readonly clock: Clock;
  readonly now: () => number;
  readonly log: Log;
  readonly choice: () => BackupChoice;
  readonly onBackup: (view: BackupView) => void;
  /** The records turned out damaged; nothing is written from here on. */
  readonly onDamage: () => void;
};

export type Upkeep = { readonly backup: DailyBackup; readonly stop: () => void };

/** What the program does for its records by itself: a backup a day, and a walk through all of them when nobody measures. */
export function startUpkeep({ store, jobs, clock, now, log, choice, onBackup, onDamage }: UpkeepOptions): Upkeep {
  const make = (folder: string, keep: Generations) => jobs.run("backup", { folder, keep, atMs: now() });
  const backup = new DailyBackup({
    choice: store.demo ? () => ({ ...choice(), folder: undefined }) : choice, // nobody wants the demo's
    demo: store.demo,
    origin: () => newestOrigin(store.db),
    recordsSinceMs: () => (store.lastPlace() === 0 ? undefined : recordsSince(store.db)),
    now,
    make,
    onChange: onBackup,
  });
  const walk = new IdleVerify({
    store,
    now,
    walk: () => jobs.run("verify", {}),
    onDamage,
    onFault: (message, cause) => log.warn(`${message}: ${cause instanceof Error ? cause.name : "fault"}`),
  });
  const stops = [everyMinute(clock, () => backup.tick()), everyMinute(clock, () => walk.tick())];
  return {
    backup,
    stop: () => {
      backup.end();
      for (const stop of stops) stop();
    },
  };
}

const newestOrigin = (db: Db) =>
  prepared<string>(db, "SELECT origin FROM origin ORDER BY n DESC LIMIT 1").pluck().get();

function recordsSince(db: Db): number | undefined {
  return prepared<number | null>(db, "SELECT min(created_ms) FROM origin").pluck().get() ?? undefined;
}
