import type { Cycle } from "../../../app/cycle/Cycle.ts";
import type { SpoolRecord } from "../../../main/link/SpoolRecord.ts";
import { SpoolReplay } from "../../../main/link/SpoolReplay.ts";
import { listSpools } from "../../../main/link/spoolFolder.ts";
import { readSpoolFile } from "../../../main/link/spoolReader.ts";
import type { SentOver } from "./runTrial.ts";
import type { TrialClamping, TrialStream } from "./trialStream.ts";

/** A cycle found in a spool, and where in the stream it was. */
type Found = { readonly cycle: Cycle; readonly fromByte: number; readonly toByte: number };
/** A stretch of the stream that reached a spool without a break. */
type Arrived = { readonly fromByte: number; readonly toByte: number };

export type TrialVerdict = {
  readonly clampings: number;
  /** Clampings all of whose bytes reached the spool over one connection, with the rest around them. */
  readonly whole: number;
  readonly found: number;
  readonly cut: number;
  readonly bytes: number;
  /** Each in words; none is what is wanted. */
  readonly lost: readonly string[];
  readonly invented: readonly string[];
  readonly wrong: readonly string[];
};

/**
 * Replays what the spools hold and holds it against the truth. Lost: a clamping that arrived whole and was not found.
 * Invented: a cycle where there was no clamping, or two for one. Wrong: a settled force off by more than half a percent.
 */
export async function judgeTrial(
  stream: TrialStream,
  sent: readonly SentOver[],
  spoolFolder: string,
): Promise<TrialVerdict> {
  const found: Found[] = [];
  const arrived: Arrived[] = [];
  for (const sessionId of new Set(sent.map((s) => s.sessionId))) {
    const replayed = await replay(
      spoolFolder,
      sessionId,
      sent.filter((s) => s.sessionId === sessionId),
    );
    found.push(...replayed.found);
    arrived.push(...replayed.arrived);
  }
  const lost: string[] = [];
  const wrong: string[] = [];
  const taken = new Set<Found>();
  let whole = 0;
  for (const [i, clamping] of stream.clampings.entries()) {
    const mine = found.filter((f) => overlap(f, clamping));
    for (const f of mine) taken.add(f);
    const entire = mine.filter((f) => !f.cycle.flags.includes("cut"));
    if (entire.length > 1) taken.delete(entire[1]!); // one too many: counts as invented below
    if (!arrivedWhole(clamping, arrived, stream)) continue;
    whole += 1;
    if (entire.length === 0)
      lost.push(`clamping ${i + 1} at byte ${clamping.fromByte}${mine.length > 0 ? ": marked cut" : ""}`);
    const off = entire[0] === undefined ? 0 : Math.abs((entire[0].cycle.settledN ?? 0) / clamping.settledN - 1);
    if (off > 0.002)
      wrong.push(
        `clamping ${i + 1}: ${entire[0]!.cycle.settledN} N for ${clamping.settledN} N, ${entire[0]!.cycle.flags.join(" ")}`,
      );
  }
  const invented = found
    .filter((f) => !taken.has(f))
    .map((f) => `a cycle of ${Math.round(f.cycle.peakN)} N at byte ${f.fromByte}, ${f.cycle.flags.join(" ")}`);
  const cut = found.filter((f) => f.cycle.flags.includes("cut")).length;
  const bytes = arrived.reduce((sum, a) => sum + a.toByte - a.fromByte, 0);
  return { clampings: stream.clampings.length, whole, found: found.length, cut, bytes, lost, invented, wrong };
}

const overlap = (a: Arrived, b: Arrived) => a.fromByte < b.toByte && b.fromByte < a.toByte;

/** With some rest on both sides: without it nobody can tell the zero, or that the force has come down. */
function arrivedWhole({ fromByte, toByte }: TrialClamping, arrived: readonly Arrived[], stream: TrialStream): boolean {
  const second = Math.round(stream.byteAt(4) / 4);
  return arrived.some(
    (a) => a.fromByte <= fromByte - REST_BEFORE_S * second && toByte + REST_AFTER_S * second <= a.toByte,
  );
}

const REST_BEFORE_S = 0;
const REST_AFTER_S = 0;

async function replay(
  spoolFolder: string,
  sessionId: string,
  sent: readonly SentOver[],
): Promise<{ found: Found[]; arrived: Arrived[] }> {
  const cycles: Cycle[] = [];
  const arrived: Arrived[] = [];
  const spoolReplay = new SpoolReplay({ cycle: (cycle) => cycles.push(cycle) });
  const placesAt: number[] = []; // places and the stream's byte after each small piece
  const bytesAt: number[] = [];
  let connection = 0;
  let at = sent[0]!.fromByte;
  const take = (record: SpoolRecord) => {
    if (record.kind === "gap" && record.why === "portGone") {
      arrived.push({ fromByte: sent[connection]!.fromByte, toByte: at });
      connection += 1;
      at = sent[connection]?.fromByte ?? at;
    }
    if (record.kind !== "bytes") {
      spoolReplay.take(record);
      return;
    }
    // In small pieces, so that a place can be found in the stream; any chunking gives the same cycles.
    for (let from = 0; from < record.bytes.length; from += PIECE) {
      const bytes = record.bytes.subarray(from, from + PIECE);
      spoolReplay.take({ ...record, bytes });
      at += bytes.length;
      placesAt.push(spoolReplay.places);
      bytesAt.push(at);
    }
  };
  for (const file of listSpools(spoolFolder).filter((f) => f.sessionId === sessionId))
    await readSpoolFile(file.path, take);
  spoolReplay.end();
  if (connection < sent.length) arrived.push({ fromByte: sent[connection]!.fromByte, toByte: at });
  const byteOf = (place: number) => bytesAt[lowerBound(placesAt, place)] ?? at;
  const found = cycles.map((cycle) => ({ cycle, fromByte: byteOf(cycle.startIndex), toByte: byteOf(cycle.endIndex) }));
  return { found, arrived };
}

const PIECE = 128;

/** First index whose value is not below `wanted`. */
function lowerBound(values: readonly number[], wanted: number): number {
  let low = 0;
  let high = values.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (values[middle]! < wanted) low = middle + 1;
    else high = middle;
  }
  return low;
}
