import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { DailyBackup, type DailyBackupView } from "../../../main/jobs/DailyBackup.ts";
import { backupName } from "../../../main/store/copies/backupName.ts";
import { stillClock, tempFolder } from "../../support/storeInTemp.ts";

const origin = "0123abcd-0000-4000-8000-000000000000";
const hour = 3_600_000;

function daily(make?: (folder: string) => Promise<unknown>) {
  const clock = stillClock();
  const folder = tempFolder();
  const made: number[] = [];
  const seen: DailyBackupView[] = [];
  const put = async (to: string) => {
    made.push(clock.atMs);
    writeFileSync(join(to, backupName({ demo: false, origin, atMs: clock.atMs })), "");
  };
  const options = { folder: () => folder as string | undefined, demo: false, origin: () => origin };
  const backup = new DailyBackup({
    ...options,
    now: clock.now,
    make: make ?? put,
    onChange: (view) => seen.push(view),
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
    expect(backup.view).toMatchObject({ lastAtMs: made[2], problem: undefined });
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
    await backup.tick();
    expect(made).toHaveLength(1);
    rmSync(folder, { recursive: true });
    await backup.tick();
    expect(backup.view).toMatchObject({ lastAtMs: undefined, problem: expect.stringContaining("ENOENT") });
  });

  it("does nothing while no folder is chosen", async () => {
    const clock = stillClock();
    const make = () => Promise.reject(new Error("must not be called"));
    const none = new DailyBackup({
      folder: () => undefined,
      demo: false,
      origin: () => origin,
      now: clock.now,
      make,
      onChange: () => {},
    });
    await none.tick();
    expect(none.view.problem).toBeUndefined();
  });
});
