import { open, stat } from "node:fs/promises";
import type { Cycle, Waveform } from "../../app/cycle/Cycle.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import type { SessionSettings } from "./SessionTypes.ts";
import { SpoolReplay } from "./SpoolReplay.ts";
import { encodeRecord } from "./spoolCodec.ts";
import { listSpools } from "./spoolFolder.ts";
import { readSpoolFile } from "./spoolReader.ts";

/** A session as its spool tells it, up to where the program stopped. */
export type Recovered = {
  readonly settings: SessionSettings;
  /** In order. One that was in work when the program stopped is the last and marked `cut`. */
  readonly cycles: readonly { readonly cycle: Cycle; readonly waveform: Waveform }[];
  /** Times of the stream at which the link was lost, seconds; undefined without a clock. */
  readonly gapsS: readonly (number | undefined)[];
  readonly unit: ForceUnit | undefined;
  readonly rateHz: number | undefined;
  /** When the last byte came, by the wall clock. */
  readonly lastWallMs: number | undefined;
  /** A record inside did not pass its check: something is missing, and the gap is marked. */
  readonly damaged: boolean;
  /** Quiet stretches, or whole older parts, had been let go: cycles may begin a few readings off from before. */
  readonly trimmed: boolean;
};

/** Replays what is kept of a session; undefined when nothing is. Reads in slices, so nothing else waits long. */
export async function recover(folder: string, sessionId: string): Promise<Recovered | undefined> {
  const cycles: { cycle: Cycle; waveform: Waveform }[] = [];
  const gapsS: (number | undefined)[] = [];
  const replay = new SpoolReplay({
    cycle: (cycle, waveform) => cycles.push({ cycle, waveform }),
    gap: (atS) => gapsS.push(atS),
  });
  const parts = listSpools(folder).filter((file) => file.sessionId === sessionId);
  let damaged = false;
  for (const part of parts) damaged = (await readSpoolFile(part.path, (r) => replay.take(r))).damaged || damaged;
  replay.end();
  if (replay.settings === undefined) return undefined;
  const { feed, settings, lastWallMs } = replay;
  const trimmed = replay.trimmed || parts[0]!.part > 1;
  return { settings, cycles, gapsS, unit: feed?.unit, rateHz: feed?.stream?.rateHz, lastWallMs, damaged, trimmed };
}

/**
 * Notes in the spool of a session that is over what became of a series it had a part in. A torn tail is cut first.
 * Without such a spool there is nothing to note.
 */
export async function markSeries(
  folder: string,
  sessionId: string,
  seriesId: string,
  what: "filed" | "cleared",
): Promise<void> {
  const last = listSpools(folder).findLast((file) => file.sessionId === sessionId);
  if (last === undefined) return;
  let atMs = 0;
  const { wholeBytes } = await readSpoolFile(last.path, (record) => {
    atMs = record.atMs;
  });
  const file = await open(last.path, "r+");
  try {
    if ((await stat(last.path)).size > wholeBytes) await file.truncate(wholeBytes);
    await file.write(encodeRecord({ kind: "series", atMs, seriesId, what }), 0, undefined, wholeBytes);
    await file.sync();
  } finally {
    await file.close();
  }
}
