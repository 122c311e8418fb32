import { describe, expect, it } from "vitest";
import { IdleVerify } from "../../../main/jobs/IdleVerify.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { stillClock, storeInTemp } from "../../support/storeInTemp.ts";

const minute = 60_000;

function idle() {
  const clock = stillClock();
  const store = storeInTemp({ now: clock.now });
  store.append([{ kind: "spindle", body: aSpindle() }]);
  const walks: number[] = [];
  const found: number[] = [];
  const faults: string[] = [];
  const walk = async () => {
    walks.push(clock.atMs);
    return verifyFile(store.db);
  };
  const onDamage = (report: { damagedCount: number }) => found.push(report.damagedCount);
  const verify = new IdleVerify({ store, now: clock.now, walk, onDamage, onFault: (message) => faults.push(message) });
  const pass = async (minutes: number) => {
    for (let i = 0; i < minutes; i += 1) {
      await verify.tick();
      clock.atMs += minute;
    }
  };
  return { clock, store, walks, found, faults, pass };
}

describe("IdleVerify", () => {
  it("walks once a day, and only while nothing is filed", async () => {
    const { store, walks, pass } = idle();
    await pass(9);
    store.append([{ kind: "spindle", body: aSpindle() }]);
    await pass(9);
    expect(walks).toHaveLength(0);
    await pass(5);
    expect(walks).toHaveLength(1);
    await pass(24 * 60);
    expect(walks).toHaveLength(2);
  });

  it("goes on walking once a day when the clock is set back by a year", async () => {
    const { clock, walks, pass } = idle();
    await pass(15);
    expect(walks).toHaveLength(1);
    clock.atMs -= 365 * 24 * 60 * minute;
    await pass(24 * 60);
    expect(walks).toHaveLength(2);
  });

  it("stops all writing when it finds damage, and says so once", async () => {
    const { store, walks, found, pass } = idle();
    store.db.exec("UPDATE entry SET hash = zeroblob(32)");
    await pass(3 * 24 * 60);
    expect(walks).toHaveLength(1);
    expect(found).toEqual([1]);
    expect(store.refusal).toMatchObject({
      code: "damaged",
      message: expect.stringContaining("damaged in 1 places, first: entry 1"),
    });
    expect(() => store.append([{ kind: "spindle", body: aSpindle() }])).toThrow(
      expect.objectContaining({ code: "damaged" }),
    );
  });

  it("tries again tomorrow when the walk itself failed", async () => {
    const { store, faults } = idle();
    const clock = stillClock();
    let walks = 0;
    const walk = () => {
      walks += 1;
      return Promise.reject(new Error("stopped"));
    };
    const verify = new IdleVerify({
      store,
      now: clock.now,
      walk,
      onDamage: () => {},
      onFault: (message) => faults.push(message),
    });
    for (let i = 0; i < 26 * 60; i += 1) {
      await verify.tick();
      clock.atMs += minute;
    }
    expect(walks).toBe(2);
    expect(faults).toHaveLength(2);
    expect(store.refusal).toBeUndefined();
  });
});
