import { type Db, prepared } from "../db.ts";
import type { WaveformRow } from "../Store.ts";

/** The packed readings of a cycle, for `decodeWaveform`; undefined when none were kept. */
export function readWaveform(db: Db, cycleId: string): WaveformRow | undefined {
  const row = prepared<{ hash: Buffer; sample_count: number; bytes: Buffer }>(
    db,
    "SELECT hash, sample_count, bytes FROM waveform WHERE cycle_id = ?",
  ).get(cycleId);
  return row && { cycleId, bytes: row.bytes, hash: row.hash.toString("hex"), sampleCount: row.sample_count };
}

/** Which of these cycles have a waveform here. */
export function cyclesWithWaveform(db: Db, cycleIds: readonly string[]): string[] {
  const there = prepared<number>(db, "SELECT 1 FROM waveform WHERE cycle_id = ?").pluck();
  return cycleIds.filter((id) => there.get(id) !== undefined);
}

/** Files a waveform; `append` does it in the transaction of the check that names its hash. */
export function insertWaveform(db: Db, { cycleId, hash, sampleCount, bytes }: WaveformRow): void {
  prepared(db, "INSERT INTO waveform (cycle_id, hash, sample_count, bytes) VALUES (?, ?, ?, ?)").run(
    cycleId,
    Buffer.from(hash, "hex"),
    sampleCount,
    bytes,
  );
}
