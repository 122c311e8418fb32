import type { Check } from "../../../app/ledger/check.ts";
import { type Db, prepared } from "../db.ts";
import type { DamageList } from "./DamageList.ts";
import { readEntry } from "./readEntry.ts";

type Filed = { n: number; origin: string; seq: number; machine: string | null };

/**
 * Pair by pair: every hash a check names against the waveform table. For when the tallies differ, which is damage, or
 * that another file's records were taken over without their waveforms, which is not.
 * @returns  how many waveforms were left out when records were taken over
 */
export function matchWaveforms(db: Db, damage: DamageList, goOn: () => void): number {
  const hashOf = prepared<Buffer>(db, "SELECT hash FROM waveform WHERE cycle_id = ?").pluck();
  let leftOut = 0;
  let named = 0;
  for (const filed of checksOf(db)) {
    goOn();
    for (const { cycleId, waveformHash } of cyclesAt(db, filed.n)) {
      if (waveformHash === null) continue;
      const there = hashOf.get(cycleId)?.toString("hex");
      if (there !== undefined) named += 1;
      if (there === waveformHash) continue;
      if (there === undefined && filed.machine === null) leftOut += 1;
      else damage.add(mismatch(filed, cycleId, there === undefined));
    }
  }
  const strays = (prepared<number>(db, "SELECT count(*) FROM waveform").pluck().get() ?? 0) - named;
  if (strays > 0) damage.add({ what: "waveform", fault: "differs", detail: `${strays} waveforms belong to no check` });
  return leftOut;
}

function checksOf(db: Db): Filed[] {
  return prepared<Filed>(
    db,
    `SELECT e.n, e.seq, o.origin, o.machine FROM check_row c JOIN entry e ON e.n = c.n JOIN origin o ON o.n = e.origin_n
     ORDER BY e.n`,
  ).all();
}

function cyclesAt(db: Db, n: number): Check["cycles"] {
  try {
    const entry = readEntry(db, n);
    const body = entry?.kind === "replacement" ? (entry.body as { by?: Partial<Check> }).by : entry?.body;
    return (body as Partial<Check> | undefined)?.cycles ?? [];
  } catch {
    return []; // a damaged entry; the walk has named it
  }
}

function mismatch({ origin, seq, n }: Filed, cycleId: string, lost: boolean) {
  const detail = lost
    ? `the waveform of cycle ${cycleId} (entry ${seq}) is gone`
    : `the waveform of cycle ${cycleId} is not the one entry ${seq} names`;
  return { what: "waveform", origin, seq, place: n, fault: lost ? "lost" : "differs", detail } as const;
}
