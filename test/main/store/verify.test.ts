import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import type { Store } from "../../../main/store/Store.ts";
import { everythingRead } from "../../support/everythingRead.ts";
import { flipBits, lookAt } from "../../support/flipBits.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp, tempFolder } from "../../support/storeInTemp.ts";

function filled(): Store {
  const store = storeInTemp();
  fillStore(store, 30);
  store.signHeads();
  return store;
}

async function found(store: Store): Promise<string[]> {
  const report = await verifyFile(store.db, { rebuild: true });
  return report.damaged.map(({ what, fault, detail }) => `${what} ${fault}: ${detail}`);
}

describe("verify", () => {
  it("finds nothing in a file where something of everything was filed", async () => {
    const store = filled();
    const report = await verifyFile(store.db, { rebuild: true });
    expect(report).toMatchObject({ damaged: [], damagedCount: 0, waveforms: 90, waveformsLeftOut: 0, signedHeads: 1 });
    expect(report.chains).toEqual([
      {
        origin: store.origin,
        merged: false,
        entries: report.entries,
        head: expect.any(String),
        firstDamaged: undefined,
      },
    ]);
  });

  it("names an entry that was rewritten, and says how far the chain holds", async () => {
    const store = filled();
    store.db.exec(
      "UPDATE entry SET packed = CAST(replace(CAST(packed AS TEXT), 'keeper', 'worker') AS BLOB) WHERE kind = 'operator' AND codec = 0",
    );
    const report = await verifyFile(store.db);
    expect(report.damaged).toEqual([
      expect.objectContaining({
        what: "entry",
        fault: "altered",
        seq: 7,
        detail: "entry 7 (operator): its bytes are not those that were filed",
      }),
    ]);
    expect(report.chains[0]).toMatchObject({ firstDamaged: 7, entries: report.entries });
  });

  it("names entries that are gone, in the middle and at the end", async () => {
    const store = filled();
    store.db.exec("DELETE FROM entry WHERE n % 4294967296 = 5");
    expect(await found(store)).toContainEqual(expect.stringContaining("entry 6 (gauge): entries before it are gone"));
    const cut = filled();
    cut.db.exec("DELETE FROM entry WHERE n = (SELECT max(n) FROM entry)");
    expect(await found(cut)).toContainEqual(expect.stringMatching(/^signedHead missing: .*the chain ends before it$/));
  });

  it("names a kind written beside an entry that it does not have", async () => {
    const store = filled();
    store.db.exec("UPDATE entry SET kind = 'round' WHERE kind = 'attachment'");
    expect(await found(store)).toContainEqual(
      expect.stringContaining("what stands beside its bytes says something else"),
    );
  });

  it("names a waveform changed, swapped or lost", async () => {
    for (const [sql, say] of [
      [
        "UPDATE waveform SET bytes = zeroblob(length(bytes)) WHERE n = (SELECT min(n) FROM waveform)",
        "waveforms of entry",
      ],
      [
        "UPDATE waveform SET cycles = (SELECT cycles FROM waveform w WHERE w.n > waveform.n LIMIT 1) WHERE n = (SELECT min(n) FROM waveform)",
        "is gone",
      ],
      ["DELETE FROM waveform WHERE n = (SELECT min(n) FROM waveform)", "is gone"],
      [
        "INSERT INTO waveform SELECT n + 1000000, cycles, bytes FROM waveform LIMIT 1",
        "waveforms of 1 checks that are not there",
      ],
    ] as const) {
      const store = filled();
      store.db.exec(sql);
      expect(await found(store)).toContainEqual(expect.stringContaining(say));
    }
  });

  it("names two cycles whose waveforms changed places", async () => {
    const store = filled();
    const [n, cycles] = store.db.prepare("SELECT n, cycles FROM waveform LIMIT 1").raw().get() as [number, string];
    const [a, b, ...rest] = JSON.parse(cycles) as [string, number][];
    store.db
      .prepare("UPDATE waveform SET cycles = ? WHERE n = ?")
      .run(JSON.stringify([[b![0], a![1]], [a![0], b![1]], ...rest]), n);
    expect((await found(store)).filter((line) => line.startsWith("waveform differs"))).toHaveLength(2);
  });

  it.each([
    [
      "UPDATE check_row SET value_n = 99999 WHERE check_id = (SELECT check_id FROM check_row LIMIT 1)",
      "record altered: check_row",
    ],
    ["UPDATE person SET name = 'Ilse Brand'", "record altered: person"],
    ["UPDATE draft SET spool_position = 0", "record altered: draft"],
    [
      "UPDATE spindle_status SET status = replace(status, '\"checkCount\":', '\"checkCount\":1')",
      "record altered: spindle_status",
    ],
    ["UPDATE run SET first_seq = 2", "record altered: run"],
    ["UPDATE origin SET created_ms = 0", "record altered: origin"],
    [
      "DELETE FROM check_row WHERE check_id = (SELECT check_id FROM check_row LIMIT 1)",
      "record lost: 31 checks are filed, 30 are listed",
    ],
    ["DELETE FROM register WHERE kind = 'gauge'", "record lost: register gauge"],
    ["UPDATE signed_head SET at = '2020-01-01T00:00:00.000Z'", "signedHead unsigned"],
    ["DROP INDEX check_stopping", "structure unreadable: check_stopping is not as it was made"],
    ["CREATE TABLE extra (a)", "structure unreadable: extra is not of this program's making"],
  ])("finds what %s did", async (sql, say) => {
    const store = filled();
    store.db.exec(sql);
    expect(await found(store)).toContainEqual(expect.stringContaining(say));
  });

  it("finds a chain written anew with hashes that fit: the signed head tells", async () => {
    const store = filled();
    store.db.exec("DELETE FROM entry WHERE n = (SELECT max(n) FROM entry)");
    const { path } = store;
    store.close();
    const again = storeInTemp({ path });
    again.append([{ kind: "attachment", body: { name: "another one" } }]);
    expect((await found(again)).filter((line) => !line.includes("signedHead"))).toEqual([]);
    expect(await found(again)).toContainEqual(expect.stringMatching(/^signedHead differs/));
  });

  it("ends when it is told to", async () => {
    const store = filled();
    const goOn = () => {
      throw new Error("stopped");
    };
    await expect(verifyFile(store.db, { watch: { goOn, progress: () => {} } })).rejects.toThrow("stopped");
  });

  it("finds every flipped bit that changes what any query returns, and never falls over", async () => {
    const store = filled();
    store.close();
    const outcome = await flipBits(readFileSync(store.path), join(tempFolder(), "flipped.sqlite"), 150, 20_240_304);
    expect(outcome.missed).toEqual([]);
    expect(outcome.changed).toBeGreaterThan(40);
    expect(outcome.found + outcome.refused).toBe(outcome.changed);
  }, 60_000);

  it("reads what it can of a file cut short, and finds that it is", async () => {
    const store = filled();
    store.close();
    const bytes = readFileSync(store.path);
    const path = join(tempFolder(), "cut.sqlite");
    for (const share of [0.1, 0.3, 0.6, 0.9, 0.99]) {
      writeFileSync(path, bytes.subarray(0, Math.floor(bytes.length * share)));
      const seen = await lookAt(path, async (db) => [everythingRead(db), (await verifyFile(db)).damagedCount] as const);
      expect(seen?.[1] ?? "refused").not.toBe(0);
    }
  });

  it("leaves a damaged file as it is when it is opened to be written", () => {
    const store = filled();
    store.db.exec("UPDATE entry SET hash = zeroblob(32) WHERE n = (SELECT max(n) FROM entry)");
    const { path } = store;
    store.db.close();
    const before = readFileSync(path);
    store.close();
    const opened = storeInTemp({ path });
    expect(opened.refusal).toMatchObject({
      code: "damaged",
      message: expect.stringContaining("Restore the last backup"),
    });
    expect(() => opened.append([{ kind: "attachment", body: {} }])).toThrow(
      expect.objectContaining({ code: "damaged" }),
    );
    expect(spindleList(opened.db)).toHaveLength(3);
    opened.close();
    expect(readFileSync(path).equals(before)).toBe(true);
  });
});
