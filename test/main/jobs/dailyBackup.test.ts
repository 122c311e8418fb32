import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { BackupView } from "../../../app/contract/backupViews.ts";
import { DailyBackup, type DailyBackupOptions, type Made } from "../../../main/jobs/DailyBackup.ts";
import { backupName } from "../../../main/store/copies/backupName.ts";
import { usualGenerations } from "../../../main/store/copies/expired.ts";
import { stillClock, tempFolder } from "../../support/storeInTemp.ts";

const origin = "0123abcd-0000-4000-8000-000000000000";
const hour = 3_600_000;
const day = 24 * hour;

function daily(make?: () => Promise<Made>, over: Partial<DailyBackupOptions> = {}) {
  const clock = stillClock();
  const folder = tempFolder();
  const made: number[] = [];
  const seen: BackupView[] = [];
  const put = async (to: string) => {
    made.push(clock.atMs);
    const file = join(to, backupName({ demo: false, origin, atMs: clock.atMs }));
    writeFileSync(file, "");
    return { file, entries: 12, damagedCount: 0 };
  };
  const sinceMs = clock.atMs;
  const backup = new DailyBackup({
    choice: () => ({ folder, keep: usualGenerations }),
    demo: false,
    origin: () => origin,
    recordsSinceMs: () => sinceMs,
    now: clock.now,
    make: make ?? put,
    onChange: (view) => seen.push(view),
    ...over,
  });
  return { backup, clock, folder, made, seen };
}

describe("DailyBackup", () => {
  it("makes one a day, by what it finds in the folder", async () => {
    const { backup, clock, made } = daily();
    for (let i = 0; i < 72; i += 1) {
      await backup.tick();
      clock.atMs += hour;
    }
    expect(made).toHaveLength(3);
    expect(backup.view).toMatchObject({ lastAtMs: made[2], problem: undefined, verifiedEntries: 12, late: undefined });
  });

  it("makes one at once on a stick that has none, and on one with another works' only", async () => {
    const { backup, clock, folder, made } = daily();
    writeFileSync(join(folder, backupName({ demo: false, origin: "ffffffff", atMs: clock.atMs })), "");
    writeFileSync(join(folder, backupName({ demo: true, origin, atMs: clock.atMs })), "");
    await backup.tick();
    expect(made).toHaveLength(1);
  });

  it("shows why it failed, tries again after ten minutes, and forgets the reason when it works", async () => {
    let fail = true;
    let tries = 0;
    const { backup, clock, seen } = daily(async () => {
      tries += 1;
      if (fail) throw new Error("The folder is not there.");
      return { file: "", entries: 1, damagedCount: 0 };
    });
    await backup.tick();
    clock.atMs += 5 * 60_000;
    await backup.tick();
    expect(tries).toBe(1);
    expect(seen.at(-1)?.problem).toBe("The folder is not there.");
    fail = false;
    clock.atMs += 6 * 60_000;
    await backup.tick();
    expect(tries).toBe(2);
    expect(seen.at(-1)?.problem).toBeUndefined();
  });

  it("tries at once when asked", async () => {
    let tries = 0;
    const { backup } = daily(async () => {
      tries += 1;
      throw new Error("no");
    });
    await backup.tick();
    backup.tryAgain();
    await backup.tick();
    expect(tries).toBe(2);
  });

  it("is not kept from it by a backup from the future, nor by a folder that is gone", async () => {
    const { backup, clock, folder, made } = daily();
    writeFileSync(join(folder, backupName({ demo: false, origin, atMs: clock.atMs + 365 * 24 * hour })), "");
    for (let minute = 0; minute < 5; minute += 1) {
      await backup.tick();
      clock.atMs += 60_000;
    }
    expect(made).toHaveLength(1); // nor made to make one every minute
    expect(backup.view.lastAtMs).toBe(made[0]);
    rmSync(folder, { recursive: true });
    await backup.tick();
    expect(backup.view).toMatchObject({ lastAtMs: undefined, problem: expect.stringContaining("ENOENT") });
  });

  it("goes on the same day when the clock is set back by a year, after a success as after a failure", async () => {
    let fail = false;
    let tries = 0;
    const { backup, clock, folder } = daily(async () => {
      tries += 1;
      if (fail) throw new Error("The folder is not there.");
      const file = join(folder, backupName({ demo: false, origin, atMs: clock.atMs }));
      writeFileSync(file, "");
      return { file, entries: 1, damagedCount: 0 };
    });
    await backup.tick();
    clock.atMs -= 365 * day;
    await backup.tick();
    expect(tries).toBe(2);
    clock.atMs += day;
    fail = true;
    await backup.tick();
    expect(tries).toBe(3);
    clock.atMs -= 365 * day;
    fail = false;
    await backup.tick();
    expect(tries).toBe(4);
    expect(backup.view).toMatchObject({ problem: undefined, lastAtMs: Math.floor(clock.atMs / 1000) * 1000 });
  });

  it("does nothing while no folder is chosen", async () => {
    const { backup } = daily(() => Promise.reject(new Error("must not be called")), {
      choice: () => ({ folder: undefined, keep: usualGenerations }),
    });
    await backup.tick();
    expect(backup.view).toMatchObject({ problem: undefined, late: undefined });
  });

  it("makes one copy of damaged records a day, and says what it is a copy of", async () => {
    let tries = 0;
    const { backup, clock } = daily(async () => {
      tries += 1;
      return { file: "x.damaged.sqlite", entries: 12, damagedCount: 3 };
    });
    for (let i = 0; i < 47; i += 1) {
      await backup.tick();
      clock.atMs += hour;
    }
    expect(tries).toBe(2);
    expect(backup.view.problem).toContain("x.damaged.sqlite");
  });

  it("calls for a folder after a week of records without one, and not before", async () => {
    const { backup, clock, seen } = daily(undefined, { choice: () => ({ folder: undefined, keep: usualGenerations }) });
    clock.atMs += 7 * day - hour;
    await backup.tick();
    expect(backup.view.late).toBeUndefined();
    clock.atMs += hour;
    await backup.tick();
    expect(seen.at(-1)?.late).toBe("noFolder");
  });

  it("calls out when there has been none for three days, and when the first one fails", async () => {
    let fail = true;
    const { backup, clock } = daily(async () => {
      if (fail) throw new Error("The stick is out.");
      return { file: "", entries: 1, damagedCount: 0 };
    });
    await backup.tick();
    expect(backup.view.late).toBe("overdue");
    fail = false;
    const other = daily();
    await other.backup.tick();
    other.clock.atMs += 2 * day;
    expect(other.backup.view.late).toBeUndefined();
    other.clock.atMs += day;
    expect(other.backup.view.late).toBe("overdue");
    clock.atMs += hour;
    await backup.tick();
    expect(backup.view.problem).toBeUndefined();
  });

  it("never calls out over an empty file, nor over the demo", async () => {
    const none = { choice: () => ({ folder: undefined, keep: usualGenerations }) };
    for (const over of [{ recordsSinceMs: () => undefined }, { demo: true }]) {
      const { backup, clock } = daily(undefined, { ...none, ...over });
      clock.atMs += 30 * day;
      await backup.tick();
      expect(backup.view.late).toBeUndefined();
    }
  });

  it("says a change once", async () => {
    const { backup, seen } = daily();
    for (let i = 0; i < 5; i += 1) await backup.tick();
    expect(seen).toHaveLength(1);
  });
});
