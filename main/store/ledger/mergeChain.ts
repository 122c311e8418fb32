import { z } from "zod";
import { canonicalJson } from "../../../app/ledger/canonicalJson.ts";
import { type Entry, envelope } from "../../../app/ledger/entry.ts";
import { GENESIS } from "../../../app/ledger/genesis.ts";
import { type Kind, parseBody } from "../../../app/ledger/kinds.ts";
import { quickParse } from "../../../app/ledger/quickParse.ts";
import { type Db, prepared } from "../db.ts";
import { applyEntry } from "../projections/applyEntry.ts";
import { insertWaveforms } from "../records/waveforms.ts";
import type { WaveformRow } from "../Store.ts";
import { StoreError } from "../StoreError.ts";
import { insertEntry, openRun } from "./Chain.ts";
import { headOf } from "./head.ts";
import { addOrigin } from "./ownOrigin.ts";
import { placeOf, placeOfEntry } from "./place.ts";
import { sha256 } from "./sha256.ts";

/** Another file's chain, each entry as its canonical text. */
export type ForeignChain = {
  readonly origin: string;
  /** Number of the last entry before these, which must be here by then; absent: they are the chain from its first entry. */
  readonly after?: number;
  readonly entries: Iterable<ForeignEntry>;
};
export type ForeignEntry = {
  readonly text: string;
  /** Of the check it holds; absent where they were left out. */
  readonly waveforms?: readonly WaveformRow[] | undefined;
};

/**
 * Takes over what of a chain is not here yet. What is here already must be the same; the rest must continue it, entry
 * by entry, in canonical form, with bodies their schemas accept. The caller holds the transaction.
 * @returns  how many entries were new
 * @throws StoreError  `conflict` where it is not the same chain, `damaged` where an entry does not hold, `newer`
 */
export function mergeChain(db: Db, { origin, after = 0, entries }: ForeignChain, nowMs: number): number {
  const known = prepared<number>(db, "SELECT n FROM origin WHERE origin = ?").pluck().get(origin);
  const originN = known ?? addOrigin(db, null, nowMs, origin).n;
  const head = headOf(db, originN);
  let prev = after === 0 ? GENESIS : hashHere(db, originN, after);
  if (prev === undefined) throw new StoreError("damaged", notThere(origin, after));
  let seq = after;
  let run: number | undefined;
  for (const { text, waveforms } of entries) {
    seq += 1;
    const hash = sha256(text);
    if (seq <= head.seq) {
      if (hash !== hashHere(db, originN, seq)) throw new StoreError("conflict", notTheSame(origin, seq));
    } else {
      const entry = checked(text, { origin, seq, prev });
      run ??= openRun(db, originN, seq - 1);
      const n = placeOf(run, seq);
      insertEntry(db, n, { entry, text, hash }, true);
      applyEntry(db, entry, n);
      if (waveforms !== undefined) insertWaveforms(db, n, matching(entry, waveforms));
    }
    prev = hash;
  }
  return Math.max(0, seq - head.seq);
}

function hashHere(db: Db, originN: number, seq: number): string | undefined {
  const place = placeOfEntry(db, originN, seq) ?? 0;
  return prepared<Buffer>(db, "SELECT hash FROM entry WHERE n = ?").pluck().get(place)?.toString("hex");
}

/** The envelope without the body, which was JSON a moment ago: its kind's schema looks at it next. */
const outer = quickParse(envelope.omit({ body: true }));

function checked(text: string, at: { origin: string; seq: number; prev: string }): Entry {
  const where = `entry ${at.seq} of chain ${at.origin}`;
  const entry = parsed(text);
  if (entry === undefined)
    throw new StoreError(
      "damaged",
      `What is to be taken over does not hold: ${where} is no entry this program knows. Nothing was taken over.`,
    );
  const { origin, seq, prev, kind, body } = entry;
  if (origin !== at.origin || seq !== at.seq || prev !== at.prev || canonicalJson(entry) !== text) {
    throw new StoreError(
      "damaged",
      `What is to be taken over does not hold: ${where} does not continue its chain. Nothing was taken over.`,
    );
  }
  if (!isOfKind(kind, body)) {
    throw new StoreError(
      "newer",
      `What is to be taken over comes from a newer Holdfast: ${where} (${kind}) is not of a form this program knows. Nothing was taken over.`,
    );
  }
  return entry;
}

/** The entry as it came, its envelope looked at; undefined: it is none. */
function parsed(text: string): Entry | undefined {
  try {
    const entry = JSON.parse(text) as Entry; // as far as it has been looked at
    const { body, ...around } = entry;
    outer(around);
    return typeof body === "object" && body !== null && !Array.isArray(body) ? entry : undefined;
  } catch {
    return undefined;
  }
}

function isOfKind(kind: Kind, body: unknown): boolean {
  try {
    parseBody(kind, body);
    return true;
  } catch (cause) {
    if (cause instanceof z.ZodError) return false;
    throw cause;
  }
}

/** Only waveforms the check names by hash. */
function matching(entry: Entry, waveforms: readonly WaveformRow[]): WaveformRow[] {
  const { cycles = [] } = (entry.kind === "replacement" ? (entry.body as { by: object }).by : entry.body) as {
    cycles?: { cycleId: string; waveformHash: string | null }[];
  };
  const named = new Map(cycles.map((c) => [c.cycleId, c.waveformHash]));
  return waveforms.map((waveform) => {
    if (named.get(waveform.cycleId) === waveform.hash && sha256(waveform.bytes) === waveform.hash) return waveform;
    throw new StoreError(
      "damaged",
      `What is to be taken over does not hold: the waveform of cycle ${waveform.cycleId} is not the one its check names. Nothing was taken over.`,
    );
  });
}

const notThere = (origin: string, seq: number) =>
  `What is to be taken over does not hold: entry ${seq} of chain ${origin}, on which the rest stands, is missing. Nothing was taken over.`;

const notTheSame = (origin: string, seq: number) =>
  `Chain ${origin} is here already, and is another one from entry ${seq} on: one of the two was changed, or both were written on after a copy. Nothing was taken over.`;
