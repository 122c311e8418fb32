import type { Check } from "../../../app/ledger/check.ts";
import { type Db, prepared } from "../db.ts";
import { unjoin, type WaveformsRow } from "../records/waveforms.ts";
import type { DamageList } from "./DamageList.ts";
import { placeOf } from "./place.ts";
import { readEntry } from "./readEntry.ts";
import { type Slice, slicesOf } from "./slices.ts";

/**
 * Pair by pair: every hash a check names against the waveform table. For when the tallies differ, which is damage, or
 * that another file's records were taken over without their waveforms, which is not.
 * @returns  how many waveforms were left out when records were taken over
 */
export function matchWaveforms(db: Db, damage: DamageList, goOn: () => void): number {
  const merged = new Set(prepared<string>(db, "SELECT origin FROM origin WHERE machine IS NULL").pluck().all());
  let leftOut = 0;
  for (const slice of slicesOf(db)) {
    goOn();
    for (let seq = slice.from; seq <= slice.to; seq += 1) {
      leftOut += matchOne(db, slice, seq, damage, merged.has(slice.origin));
    }
  }
  const strays = prepared<number>(db, "SELECT count(*) FROM waveform WHERE n NOT IN (SELECT n FROM check_row)");
  const strayCount = strays.pluck().get() ?? 0;
  if (strayCount > 0)
    damage.add({ what: "waveform", fault: "differs", detail: `waveforms of ${strayCount} checks that are not there` });
  return leftOut;
}

function matchOne(db: Db, slice: Slice, seq: number, damage: DamageList, mayBeLeftOut: boolean): number {
  const place = placeOf(slice.run, seq);
  const wanted = cyclesAt(db, place).filter(({ waveformHash }) => waveformHash !== null);
  const there = waveformsAt(db, place);
  if (wanted.length > 0 && there.size === 0 && mayBeLeftOut) return wanted.length;
  for (const { cycleId, waveformHash } of wanted) {
    const hash = there.get(cycleId);
    if (hash !== waveformHash) damage.add(mismatch(slice, seq, cycleId, hash === undefined));
    there.delete(cycleId);
  }
  for (const cycleId of there.keys()) damage.add(mismatch(slice, seq, cycleId, false));
  return 0;
}

function waveformsAt(db: Db, place: number): Map<string, string> {
  try {
    const row = prepared<WaveformsRow>(db, "SELECT cycles, bytes FROM waveform WHERE n = ?").get(place);
    return new Map(row === undefined ? [] : unjoin(row).map(({ cycleId, hash }) => [cycleId, hash]));
  } catch {
    return new Map(); // a damaged row; it has been named
  }
}

function cyclesAt(db: Db, n: number): Check["cycles"] {
  try {
    const entry = readEntry(db, n);
    if (entry?.kind === "check") return (entry.body as Check).cycles;
    return entry?.kind === "replacement" ? (entry.body as { by: Check }).by.cycles : [];
  } catch {
    return []; // a damaged entry; the walk has named it
  }
}

function mismatch({ origin, run }: Slice, seq: number, cycleId: string, lost: boolean) {
  const detail = lost
    ? `the waveform of cycle ${cycleId} (entry ${seq}) is gone`
    : `the waveform of cycle ${cycleId} is not the one entry ${seq} names`;
  return { what: "waveform", origin, seq, place: placeOf(run, seq), fault: lost ? "lost" : "differs", detail } as const;
}
