import { type Db, prepared } from "../store/db.ts";
import { unjoin, type WaveformsRow } from "../store/records/waveforms.ts";
import type { FiledEntry } from "../store/Store.ts";
import { decodeWaveform } from "../store/waveform.ts";
import type { WaveformLine } from "./archiveForm.ts";
import { checkIn } from "./CsvFiles.ts";

/** The readings of an entry's cycles: as they are packed, to be taken over again, and as numbers for everybody. */
export function waveformsOf(db: Db, entry: FiledEntry): { readonly line: string; readonly csvText: string }[] {
  const check = checkIn(entry);
  const row = check && prepared<WaveformsRow>(db, "SELECT cycles, bytes FROM waveform WHERE n = ?").get(entry.n);
  if (check === undefined || row === undefined) return [];
  const { origin, seq } = entry;
  return unjoin(row).map(({ cycleId, bytes, hash, sampleCount }) => {
    const line: WaveformLine = {
      origin,
      seq,
      cycleId,
      sampleCount,
      hash,
      packed: Buffer.from(bytes).toString("base64"),
    };
    return { line: `${JSON.stringify(line)}\n`, csvText: csvLineOf(check.checkId, cycleId, bytes) };
  });
}

function csvLineOf(checkId: string, cycleId: string, bytes: Uint8Array): string {
  const { fromIndex, time, forceN } = decodeWaveform(bytes);
  const even = time === undefined || time instanceof Float64Array ? undefined : time;
  const times = time instanceof Float64Array ? time.join(" ") : "";
  return `${checkId},${cycleId},${fromIndex},${even?.startS ?? ""},${even?.stepS ?? ""},${times},${forceN.join(" ")}\r\n`;
}
