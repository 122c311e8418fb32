import { saveDraft } from "../../main/store/draft.ts";
import { putPerson } from "../../main/store/records/operators.ts";
import type { EntryDraft, Store } from "../../main/store/Store.ts";
import { encodeWaveformNow } from "../../main/store/waveform.ts";
import { aCheck, idOf, invented } from "./aCheck.ts";
import { aSpindle } from "./aSpindle.ts";

const reason = "as agreed on the floor";

/** Files something of everything: registers, checks with waveforms, service, void, replacement, release, choice, names, draft. */
export function fillStore(store: Store, checks = 60): void {
  const spindles = [11, 12, 13].map((n) => idOf(n));
  store.append(registers(spindles));
  for (let i = 1; i <= checks; i += 1) fileOne(store, i, spindles[i % spindles.length]!);
  const id = (i: number) => aCheck({ seed: i }).checkId;
  const by = aCheck({ seed: 900, spindleId: spindles[0]! });
  store.append([
    { kind: "void", body: { checkId: id(3), reason, operatorId: idOf(4) } },
    { kind: "replacement", body: { checkId: id(6), by, reason, operatorId: null } },
    { kind: "baselineChoice", body: { spindleId: spindles[1]!, checkId: id(4), reason, operatorId: null } },
    { kind: "remeasureMark", body: { checkIds: [id(7), id(8)], reason, operatorId: null } },
    {
      kind: "stopRelease",
      body: { spindleId: spindles[2]!, checkId: id(5), reason, operatorId: idOf(4), workOrder: "A 17" },
    },
    { kind: "attachment", body: { name: "gauge against weights", coefficients: [0.1, 1.0003] } },
  ]);
  store.write((db) => {
    putPerson(db, { operatorId: idOf(4), name: "Ilse Brandt", initials: "IB", pin: "scrypt$16384$salt$hash" });
    saveDraft(db, {
      body: { seriesId: idOf(99), note: "second shift" },
      spoolPosition: 4711,
      savedAtMs: 1_700_000_000_000,
    });
  });
}

/** One check with a waveform a cycle, by number: the same each time. */
export function fileOne(store: Store, i: number, spindleId: string): void {
  const verdict = i % 20 === 5 ? ("stop" as const) : ("good" as const);
  const measuredAt = new Date(Date.UTC(2024, 0, 1, 8) + i * 7_200_000).toISOString();
  const body = aCheck({ seed: i, spindleId, measuredAt, verdict });
  const next = invented(i);
  const waveforms = body.cycles.map((cycle) => {
    const forceN = Float64Array.from({ length: 120 }, () => 10 * Math.round(2_400 + 6 * next()));
    const waveform = encodeWaveformNow(cycle.cycleId, { fromIndex: 0, forceN, time: { startS: 0, stepS: 0.01 } });
    cycle.waveformHash = waveform.hash;
    return waveform;
  });
  store.append([{ kind: "check", body }], { waveforms });
}

function registers(spindles: readonly string[]): EntryDraft[] {
  return [
    {
      kind: "works",
      body: {
        worksId: idOf(10),
        name: "Quarry Lane works",
        timeZone: "Europe/Vienna",
        rule: { rule: "simple" },
        cautionDrop: 0.1,
        actDrop: 0.2,
        unitShown: "kN",
        intervalDays: 90,
      },
    },
    ...spindles.map((spindleId, i) => ({
      kind: "spindle" as const,
      body: aSpindle({ spindleId, name: `Larch ${i + 1}` }),
    })),
    {
      kind: "adapter",
      body: {
        adapterId: idOf(2),
        name: "H63",
        taper: "hollow 63",
        scale: 1,
        scaleUncertainty: 0.005,
        assumed: true,
        version: 1,
        state: "inUse",
      },
    },
    {
      kind: "gauge",
      body: { gaugeId: idOf(3), name: "Bench gauge", capacityN: 50_000, resolutionN: 10, state: "inUse" },
    },
    { kind: "operator", body: { operatorId: idOf(4), role: "keeper", state: "inUse" } },
    {
      kind: "linePattern",
      body: { patternId: idOf(5), name: "number, unit", pattern: { fields: ["number", "unit"] } },
    },
    { kind: "setting", body: { key: "warmUpMinutes", value: 10 } },
    {
      kind: "serviceEvent",
      body: { eventId: idOf(20), spindleId: spindles[0]!, at: "2024-01-03", kind: "lubricated", newBaseline: true },
    },
  ];
}
