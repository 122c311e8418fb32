import { describe, expect, it } from "vitest";
import { clearDraft, loadDraft, saveDraft } from "../../../main/store/draft.ts";
import { readEntry } from "../../../main/store/ledger/readEntry.ts";
import { checkPage, checkSummary, readCheck } from "../../../main/store/records/checks.ts";
import { dueOn } from "../../../main/store/records/dueOn.ts";
import { checkCountsByTool, readGauge } from "../../../main/store/records/gauges.ts";
import { allHistoryPoints, historyPoints } from "../../../main/store/records/histories.ts";
import { erasePerson, operatorList, putPerson, readOperator } from "../../../main/store/records/operators.ts";
import { readPattern } from "../../../main/store/records/patterns.ts";
import { serviceEvents } from "../../../main/store/records/serviceEvents.ts";
import { readSpindle, spindleList } from "../../../main/store/records/spindles.ts";
import { readSettings, readWorks } from "../../../main/store/records/works.ts";
import type { Store } from "../../../main/store/Store.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { fillStore } from "../../support/fullStore.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

function withChecks(count: number): Store {
  const store = storeInTemp();
  store.append([{ kind: "spindle", body: aSpindle() }]);
  store.append(
    Array.from({ length: count }, (_, i) => {
      const measuredAt = new Date(Date.UTC(2024, 0, 1) + Math.floor(i / 3) * 3_600_000).toISOString(); // three at a time
      return { kind: "check" as const, body: aCheck({ seed: i + 1, cycleCount: 1, measuredAt }) };
    }),
  );
  return store;
}

describe("a spindle's checks", () => {
  it("come page by page, newest first, each once, also those measured at one time", () => {
    const { db } = withChecks(50);
    const all = checkPage(db, idOf(1), 1_000);
    expect(all.map((c) => c.measuredAtMs)).toEqual(all.map((c) => c.measuredAtMs).toSorted((a, b) => b - a));
    const paged: string[] = [];
    for (let page = checkPage(db, idOf(1), 7); page.length > 0; page = checkPage(db, idOf(1), 7, page.at(-1))) {
      paged.push(...page.map((c) => c.checkId));
    }
    expect(paged).toEqual(all.map((c) => c.checkId));
    expect(new Set(paged).size).toBe(50);
  });

  it("are read whole by id, as they were filed, with their place in the ledger", () => {
    const { db } = withChecks(3);
    const body = aCheck({ seed: 2, cycleCount: 1, measuredAt: "2024-01-01T00:00:00.000Z" });
    const filed = readCheck(db, body.checkId)!;
    expect(filed.check).toEqual(body);
    expect(filed).toMatchObject({
      seq: 3,
      hash: readEntry(db, filed.summary.place)!.hash,
      filedAt: "2024-03-04T09:00:00.000Z",
    });
    expect(checkSummary(db, body.checkId)).toEqual(filed.summary);
    expect(filed.summary).toMatchObject({
      valueN: body.valueN,
      standardUncertaintyN: body.budget!.standardN,
      expandedN: body.budget!.expandedN,
      verdict: "good",
      n: 1,
      basis: "settled",
      isBaseline: false,
      voided: undefined,
      remeasure: false,
    });
    expect(readCheck(db, idOf(404))).toBeUndefined();
  });

  it("make a history, oldest first, of those that count; all spindles' in one pass", () => {
    const store = withChecks(5);
    store.append([
      { kind: "spindle", body: aSpindle({ spindleId: idOf(11) }) },
      { kind: "check", body: aCheck({ seed: 90, spindleId: idOf(11) }) },
    ]);
    store.append([
      { kind: "void", body: { checkId: aCheck({ seed: 3 }).checkId, reason: "wrong adapter", operatorId: null } },
    ]);
    store.append([{ kind: "check", body: aCheck({ seed: 91, valueN: null, verdict: "cannotTell" }) }]);
    const points = historyPoints(store.db, idOf(1));
    expect(points.map((row) => row.checkId)).toEqual([1, 2, 4, 5].map((seed) => aCheck({ seed }).checkId));
    const ofCourse = (spindleId: string) =>
      historyPoints(store.db, spindleId).map(({ checkId, verdict, reason, ...point }) => ({
        ...point,
        reason: reason === "routine" ? undefined : reason,
      }));
    for (const atOnce of [1, 2, 5, undefined]) {
      expect([...allHistoryPoints(store.db, atOnce)]).toEqual([
        [idOf(1), ofCourse(idOf(1))],
        [idOf(11), ofCourse(idOf(11))],
      ]);
    }
  });
});

describe("hot queries", () => {
  const plan = (store: Store, sql: string) =>
    (store.db.prepare(`EXPLAIN QUERY PLAN ${sql}`).all() as { detail: string }[]).map((row) => row.detail).join("; ");

  it.each([
    [
      "SELECT * FROM check_row WHERE spindle_id = 'a' AND (measured_at_ms, n) < (1, 2) ORDER BY measured_at_ms DESC, n DESC LIMIT 9",
      "check_by_spindle",
    ],
    [
      "SELECT measured_at_ms, n FROM check_row WHERE spindle_id = 'a' AND state = 'valid' ORDER BY measured_at_ms DESC, n DESC LIMIT 1",
      "check_by_spindle",
    ],
    ["SELECT * FROM check_row WHERE check_id = 'a'", "USING INDEX sqlite_autoindex_check_row_1"],
    ["SELECT * FROM check_row WHERE n = 1", "INTEGER PRIMARY KEY"],
    ["SELECT status FROM spindle_status WHERE spindle_id = 'a'", "PRIMARY KEY"],
    ["SELECT max(n) FROM entry WHERE n >= 1 AND n < 2", "INTEGER PRIMARY KEY"],
    ["SELECT n FROM entry WHERE kind = 'void' AND kind <> 'check' ORDER BY n", "entry_by_kind"],
    ["SELECT body FROM service_event WHERE spindle_id = 'a' ORDER BY at, n", "service_event_by_spindle"],
  ])("are answered by an index and without sorting: %s", (sql, by) => {
    const found = plan(storeInTemp(), sql);
    expect(found).toContain(by);
    expect(found).not.toMatch(/TEMP B-TREE|SCAN (?!.*LIMIT)/);
  });
});

describe("registers", () => {
  it("hold what was filed last under an id", () => {
    const store = storeInTemp();
    store.append([
      { kind: "spindle", body: aSpindle() },
      { kind: "spindle", body: aSpindle({ name: "Larch 3, rebuilt", intervalDays: 30 }) },
    ]);
    expect(spindleList(store.db).map((s) => s.spindle)).toEqual([
      aSpindle({ name: "Larch 3, rebuilt", intervalDays: 30 }),
    ]);
    expect(readSpindle(store.db, idOf(1))?.spindle.intervalDays).toBe(30);
    expect(readSpindle(store.db, idOf(2))).toBeUndefined();
  });

  it("are all read back", () => {
    const store = storeInTemp();
    expect(readWorks(store.db)).toBeUndefined();
    fillStore(store, 9);
    expect(readWorks(store.db)?.name).toBe("Quarry Lane works");
    expect(readSettings(store.db)).toEqual({ warmUpMinutes: 10 });
    expect(readGauge(store.db, idOf(3))?.capacityN).toBe(50_000);
    expect(readPattern(store.db, idOf(5))?.pattern).toEqual({ fields: ["number", "unit"] });
    expect(serviceEvents(store.db, idOf(11)).map((e) => e.kind)).toEqual(["lubricated"]);
    // Nine checks and a replacement, less a voided and a replaced one.
    expect(checkCountsByTool(store.db)).toEqual(
      new Map([
        [idOf(2), 8],
        [idOf(3), 8],
      ]),
    );
  });

  it("keep names beside the chain, where they can be erased without touching it", () => {
    const store = storeInTemp();
    const [filed] = store.append([
      { kind: "operator", body: { operatorId: idOf(4), role: "technician", state: "inUse" } },
    ]);
    store.write((db) => putPerson(db, { operatorId: idOf(4), name: "Ilse Brandt", initials: "IB", pin: "scrypt$1" }));
    expect(readOperator(store.db, idOf(4))).toMatchObject({
      role: "technician",
      person: { name: "Ilse Brandt", pin: "scrypt$1" },
    });
    store.write((db) => erasePerson(db, idOf(4)));
    expect(operatorList(store.db)).toEqual([
      { operatorId: idOf(4), role: "technician", state: "inUse", person: undefined },
    ]);
    expect(readEntry(store.db, filed!.n)?.hash).toBe(filed!.hash);
  });
});

describe("the draft", () => {
  it("is kept, replaced and gone with the check that was made of it", () => {
    const store = storeInTemp();
    const draft = { body: { cycles: [1, 2] }, spoolPosition: 4711, savedAtMs: 5 };
    store.write((db) => saveDraft(db, { ...draft, spoolPosition: 1 }));
    store.write((db) => saveDraft(db, draft));
    store.close();
    const again = storeInTemp({ path: store.path });
    expect(loadDraft(again.db)).toEqual(draft);
    again.append([{ kind: "check", body: aCheck() }], { alsoInTransaction: clearDraft });
    expect(loadDraft(again.db)).toBeUndefined();
  });
});

describe("the next check", () => {
  const at = (iso: string, offsetMinutes = 0) => ({ measuredAtMs: Date.parse(iso), offsetMinutes });

  it("is due so many days after the last one's date in the works' time zone", () => {
    // 23:30 UTC on 28 February 2024 is already the 29th in Vienna; 2024 is a leap year.
    expect(dueOn(at("2024-02-28T23:30:00.000Z"), 1, "Europe/Vienna")).toBe("2024-03-01");
    expect(dueOn(at("2024-02-28T23:30:00.000Z"), 1, "America/New_York")).toBe("2024-02-29");
    expect(dueOn(at("2024-02-28T23:30:00.000Z"), 366, "UTC")).toBe("2025-02-28");
  });

  it("goes by the clock of the PC where the time zone is not known, and is nowhere without a last one or an interval", () => {
    expect(dueOn(at("2024-02-28T23:30:00.000Z", 60), 1, "Mars/Olympus")).toBe("2024-03-01");
    expect(dueOn(at("2024-02-28T23:30:00.000Z"), undefined, "UTC")).toBeUndefined();
    expect(dueOn(undefined, 90, "UTC")).toBeUndefined();
  });

  it("stands in the list, by the spindle's own interval or the works'", () => {
    const store = storeInTemp();
    fillStore(store, 3);
    const [first] = spindleList(store.db);
    store.append([{ kind: "spindle", body: { ...first!.spindle, intervalDays: 10 } }]);
    expect(spindleList(store.db).map((s) => s.dueOn)).toEqual([
      "2024-03-14", // the replacement was measured on 4 March
      "2024-03-31",
      "2024-03-31",
    ]);
  });
});
