import { createHash } from "node:crypto";
import { describe, expect, it } from "vitest";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { GENESIS } from "../../../app/ledger/genesis.ts";
import { readEntry } from "../../../main/store/ledger/readEntry.ts";
import { checkPage, readCheck } from "../../../main/store/records/checks.ts";
import { spindleList } from "../../../main/store/records/spindles.ts";
import { cyclesWithWaveform, readWaveform } from "../../../main/store/records/waveforms.ts";
import { decodeWaveform, encodeWaveformNow } from "../../../main/store/waveform.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { stillClock, storeInTemp } from "../../support/storeInTemp.ts";

describe("append", () => {
  it("continues the chain over canonical bytes, by a second way of computing it", () => {
    const store = storeInTemp();
    const filed = store.append([
      { kind: "spindle", body: aSpindle() },
      { kind: "check", body: aCheck() },
    ]);
    filed.push(
      ...store.append([
        { kind: "void", body: { checkId: aCheck().checkId, reason: "wrong adapter", operatorId: null } },
      ]),
    );
    let prev = GENESIS;
    for (const [i, { hash, n, ...entry }] of filed.entries()) {
      expect(entry).toMatchObject({
        v: 1,
        origin: store.origin,
        seq: i + 1,
        prev,
        at: "2024-03-04T09:00:00.000Z",
        offsetMinutes: 60,
      });
      expect(createHash("sha256").update(canonicalJson(entry)).digest("hex")).toBe(hash);
      expect(readEntry(store.db, n)).toEqual({ ...entry, hash, n });
      prev = hash;
    }
  });

  it("files all of a batch or nothing", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const wrong = { ...aCheck(), verdict: "splendid" } as unknown as ReturnType<typeof aCheck>;
    expect(() =>
      store.append([
        { kind: "spindle", body: aSpindle({ name: "Larch 9" }) },
        { kind: "check", body: wrong },
      ]),
    ).toThrow(/verdict/);
    const [spindle] = spindleList(store.db);
    expect(spindle?.spindle.name).toBe("Larch 3");
    expect(store.append([{ kind: "spindle", body: aSpindle() }])[0]?.seq).toBe(2);
  });

  it("takes nothing when the work beside it fails", () => {
    const store = storeInTemp();
    const fail = () => {
      throw new Error("the draft could not be cleared");
    };
    expect(() => store.append([{ kind: "check", body: aCheck() }], { alsoInTransaction: fail })).toThrow("the draft");
    expect(checkPage(store.db, idOf(1), 10)).toEqual([]);
    expect(store.lastEntryAtMs()).toBeUndefined();
  });

  it.each([
    ["an unknown member", { surplus: 1 }],
    ["a torque for a unit", { unit: "newton metres" }],
    ["an id that is none", { spindleId: "7" }],
    ["an instant without milliseconds", { measuredAt: "2024-03-04T08:00:00Z" }],
    ["a value that is not a number", { valueN: Number.NaN }],
    ["limits that fall", { limits: { minimumN: 30_000, maximumN: 20_000 } }],
  ])("refuses a check with %s", (_, over) => {
    const store = storeInTemp();
    expect(() =>
      store.append([{ kind: "check", body: { ...aCheck(), ...over } as ReturnType<typeof aCheck> }]),
    ).toThrow();
    expect(store.lastEntryAtMs()).toBeUndefined();
  });

  it("refuses to file the same check twice", () => {
    const store = storeInTemp();
    store.append([{ kind: "check", body: aCheck() }]);
    expect(() => store.append([{ kind: "check", body: aCheck() }])).toThrow(
      expect.objectContaining({ code: "conflict" }),
    );
    expect(checkPage(store.db, idOf(1), 10)).toHaveLength(1);
  });

  it("files waveforms with the check that names them, and gives back the identical readings", () => {
    const store = storeInTemp();
    const body = aCheck();
    const forceN = Float64Array.from({ length: 300 }, (_, i) => Math.round(20_000 + 100 * Math.sin(i)));
    const waveform = encodeWaveformNow(body.cycles[0]!.cycleId, {
      fromIndex: 12,
      forceN,
      time: { startS: 1.25, stepS: 0.01 },
    });
    body.cycles[0]!.waveformHash = waveform.hash;
    const [filed] = store.append([{ kind: "check", body }], { waveforms: [waveform] });
    expect(cyclesWithWaveform(store.db, filed!.n)).toEqual([waveform.cycleId]);
    const kept = readWaveform(store.db, filed!.n, waveform.cycleId);
    expect(kept).toEqual(waveform);
    expect(decodeWaveform(kept!.bytes)).toEqual({ fromIndex: 12, forceN, time: { startS: 1.25, stepS: 0.01 } });
  });

  it("refuses a waveform no check names, and a check whose waveform is not there", () => {
    const store = storeInTemp();
    const waveform = encodeWaveformNow(idOf(77), { fromIndex: 0, forceN: new Float64Array(3), time: undefined });
    expect(() => store.append([{ kind: "check", body: aCheck() }], { waveforms: [waveform] })).toThrow(RangeError);
    const body = aCheck();
    body.cycles[0]!.waveformHash = waveform.hash;
    expect(() => store.append([{ kind: "check", body }])).toThrow(RangeError);
    expect(store.lastEntryAtMs()).toBeUndefined();
  });

  it("knows when the last entry was made, also when the clock was set back since", () => {
    const clock = stillClock();
    const store = storeInTemp({ now: clock.now });
    expect(store.lastEntryAtMs()).toBeUndefined();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const first = clock.atMs;
    clock.atMs -= 365 * 86_400_000;
    expect(store.lastEntryAtMs()).toBe(first);
    const [filed] = store.append([{ kind: "check", body: aCheck({ clockDoubtful: true }) }]);
    expect(filed?.seq).toBe(2);
    expect(readCheck(store.db, aCheck().checkId)?.check.clockDoubtful).toBe(true);
  });

  it("gives ids that sort by when they were made", () => {
    const clock = stillClock();
    const store = storeInTemp({ now: clock.now });
    const first = store.newId();
    clock.atMs += 1;
    const second = store.newId();
    expect(first).toMatch(/^[0-9a-f]{8}-[0-9a-f]{4}-7[0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/);
    expect(first < second).toBe(true);
  });
});
