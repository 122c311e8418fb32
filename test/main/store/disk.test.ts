import { rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it, type TestContext } from "vitest";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { openStore } from "../../../main/store/open.ts";
import { checkPage } from "../../../main/store/records/checks.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { smallDisk, writeProtect } from "../../support/smallDisk.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

/** A test that did not run must not look like one that passed. */
function diskOf(megabytes: number, context: TestContext): string {
  const folder = smallDisk(megabytes);
  if (folder === undefined) {
    process.stderr.write(`SKIPPED: ${context.task.name}: mounting is refused here\n`);
    return context.skip("mounting is refused here");
  }
  return folder;
}

const now = () => 1_709_600_000_000;

describe("a small disk", () => {
  it("that fills up stops the accepting in plain words, loses nothing, and goes on when there is room", async (context) => {
    const folder = diskOf(10, context);
    const ballast = join(folder, "ballast");
    writeFileSync(ballast, Buffer.alloc(4 * 1024 * 1024));
    const store = storeInTemp({ path: join(folder, "holdfast.sqlite") });
    store.append([{ kind: "spindle", body: aSpindle() }]);
    let filed = 0;
    const acceptMany = () => {
      for (;;) {
        store.append([{ kind: "check", body: aCheck({ seed: filed + 1, cycleCount: 5 }) }]);
        filed += 1;
        if (filed > 5_000) throw new Error("the disk never filled up");
      }
    };
    expect(acceptMany).toThrow(
      expect.objectContaining({ code: "full", message: expect.stringContaining("Make room") }),
    );
    expect(filed).toBeGreaterThan(10);
    expect(store.refusal).toBeUndefined();
    expect(checkPage(store.db, idOf(1), 10_000)).toHaveLength(filed);
    expect((await verifyFile(store.db, { rebuild: true })).damaged).toEqual([]);
    rmSync(ballast);
    store.append([{ kind: "check", body: aCheck({ seed: 9_999 }) }]);
    expect(checkPage(store.db, idOf(1), 10_000)).toHaveLength(filed + 1);
  });

  it("that is write-protected opens for reading, and says so", (context) => {
    const folder = diskOf(4, context);
    const path = join(folder, "holdfast.sqlite");
    const store = openStore({ path, now });
    store.append([{ kind: "spindle", body: aSpindle() }]);
    store.close();
    expect(writeProtect(folder)).toBe(true);
    const again = storeInTemp({ path });
    expect(again.refusal).toMatchObject({ code: "readOnly", message: expect.stringContaining("write-protected") });
    expect(spindleList(again.db)).toHaveLength(1);
    expect(() => again.append([{ kind: "spindle", body: aSpindle() }])).toThrow(
      expect.objectContaining({ code: "readOnly" }),
    );
    expect(() => openStore({ path: join(folder, "new.sqlite"), now })).toThrow(
      expect.objectContaining({ code: "readOnly", message: expect.stringContaining("cannot be made") }),
    );
  });
});
