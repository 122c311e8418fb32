import { describe, expect, it } from "vitest";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { chainReports } from "../../../main/store/ledger/LedgerReport.ts";
import type { ForeignChain } from "../../../main/store/ledger/mergeChain.ts";
import { allEntries } from "../../../main/store/ledger/readEntry.ts";
import { verifyFile } from "../../../main/store/ledger/verifyFile.ts";
import { checkPage } from "../../../main/store/records/checks.ts";
import { readSpindle, spindleList } from "../../../main/store/records/spindles.ts";
import { readWaveform } from "../../../main/store/records/waveforms.ts";
import type { Store } from "../../../main/store/Store.ts";
import { encodeWaveformNow } from "../../../main/store/waveform.ts";
import { aCheck, idOf } from "../../support/aCheck.ts";
import { aSpindle } from "../../support/aSpindle.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

/** The chains of a store as another program would hand them over. */
function chainsOf(store: Store, withWaveforms = true): ForeignChain[] {
  const chains = new Map<string, { text: string; waveforms?: ReturnType<typeof readWaveform>[] }[]>();
  for (const { hash, n, ...entry } of allEntries(store.db)) {
    const cycles = entry.kind === "check" ? (entry.body as ReturnType<typeof aCheck>).cycles : [];
    const named = cycles.filter((c) => c.waveformHash !== null);
    const waveforms = withWaveforms ? named.map((c) => readWaveform(store.db, n, c.cycleId)!) : undefined;
    chains.set(entry.origin, [...(chains.get(entry.origin) ?? []), { text: canonicalJson(entry), waveforms }]);
  }
  return [...chains].map(([origin, entries]) => ({ origin, entries })) as ForeignChain[];
}

const act = { detail: "from the other hall", operatorId: null };

function otherHall(): Store {
  const store = storeInTemp({ machine: "other hall" });
  const body = aCheck({ seed: 7, spindleId: idOf(70) });
  const waveform = encodeWaveformNow(body.cycles[0]!.cycleId, {
    fromIndex: 0,
    forceN: new Float64Array(9).fill(5),
    time: undefined,
  });
  body.cycles[0]!.waveformHash = waveform.hash;
  store.append([{ kind: "spindle", body: aSpindle({ spindleId: idOf(70), name: "Rowan 1" }) }]);
  store.append([{ kind: "check", body }], { waveforms: [waveform] });
  return store;
}

const headOfOrigin = (store: Store, origin: string | undefined) =>
  chainReports(store.db, []).find((c) => c.origin === origin)?.head;

describe("merging another file's chains", () => {
  it("takes over every entry with the same head, and files the act in the own chain", async () => {
    const other = otherHall();
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    expect(store.merge(chainsOf(other), act)).toBe(2);
    expect(headOfOrigin(store, other.origin)).toBe(headOfOrigin(other, other.origin));
    expect(spindleList(store.db).map((s) => s.spindle.name)).toEqual(["Larch 3", "Rowan 1"]);
    expect(readSpindle(store.db, idOf(70))?.checkCount).toBe(1);
    const [filed] = store.append([{ kind: "check", body: aCheck() }]);
    expect(filed).toMatchObject({ origin: store.origin, seq: 3 }); // spindle, act, check
    const report = await verifyFile(store.db, { rebuild: true });
    expect(report).toMatchObject({ damaged: [], entries: 5, waveforms: 1, waveformsLeftOut: 0 });
  });

  it("adds nothing the second time, and goes on where the first time ended", () => {
    const other = otherHall();
    const store = storeInTemp();
    store.merge(chainsOf(other), act);
    expect(store.merge(chainsOf(other), act)).toBe(0);
    other.append([{ kind: "check", body: aCheck({ seed: 8, spindleId: idOf(70) }) }]);
    expect(store.merge(chainsOf(other), act)).toBe(1);
    expect(headOfOrigin(store, other.origin)).toBe(headOfOrigin(other, other.origin));
    expect(checkPage(store.db, idOf(70), 10)).toHaveLength(2);
  });

  it("can leave waveforms behind, which is not taken for damage", async () => {
    const store = storeInTemp();
    store.merge(chainsOf(otherHall(), false), act);
    expect(await verifyFile(store.db)).toMatchObject({ damaged: [], waveforms: 0, waveformsLeftOut: 1 });
  });

  it("takes an older copy's own entries back into their chain", () => {
    const store = storeInTemp();
    store.append([{ kind: "spindle", body: aSpindle() }]);
    const old = chainsOf(store);
    expect(store.merge(old, act)).toBe(0);
  });

  it.each([
    ["an entry changed", (t: string) => t.replace("Rowan 1", "Rowan 2"), "damaged"],
    ["an entry not in canonical form", (t: string) => t.replace('{"at"', '{ "at"'), "damaged"],
    [
      "a body of a form this program does not know",
      (t: string) => t.replace('"state":"inUse"', '"state":"lent"'),
      "newer",
    ],
    ["an entry that is no JSON", () => "{", "damaged"],
  ])("refuses a chain with %s, and takes nothing over", (_, spoil, code) => {
    const store = storeInTemp();
    const [chain] = chainsOf(otherHall());
    const entries = [...chain!.entries].map((e, i) => (i === 0 ? { ...e, text: spoil(e.text) } : e));
    expect(() => store.merge([{ ...chain!, entries }], act)).toThrow(
      expect.objectContaining({ code: expect.stringMatching(`${code}|damaged`) }),
    );
    expect(store.lastPlace()).toBe(0);
    expect(spindleList(store.db)).toEqual([]);
    expect(chainReports(store.db, []).map((c) => c.origin)).toEqual([store.origin]);
  });

  it("refuses a chain that parted from the one here", () => {
    const store = storeInTemp();
    const other = otherHall();
    store.merge(chainsOf(other), act);
    const [chain] = chainsOf(other);
    const entries = [...chain!.entries].map((e) => ({ ...e, text: e.text.replace("Rowan", "Maple") }));
    const before = store.lastPlace();
    expect(() => store.merge([{ ...chain!, entries }], act)).toThrow(expect.objectContaining({ code: "conflict" }));
    expect(store.lastPlace()).toBe(before);
  });

  it("refuses a waveform that is not the one its check names", () => {
    const store = storeInTemp();
    const [chain] = chainsOf(otherHall());
    const entries = [...chain!.entries].map((e) => ({
      ...e,
      waveforms: e.waveforms?.map((w) => ({ ...w, bytes: w.bytes.map((b) => b ^ 1) })),
    }));
    expect(() => store.merge([{ ...chain!, entries }], act)).toThrow(expect.objectContaining({ code: "damaged" }));
    expect(store.lastPlace()).toBe(0);
  });
});
