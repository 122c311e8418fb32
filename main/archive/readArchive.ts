import { z } from "zod";
import type { ForeignChain, ForeignEntry } from "../store/ledger/mergeChain.ts";
import { sha256 } from "../store/ledger/sha256.ts";
import type { Watch } from "../store/ledger/walkSlices.ts";
import type { WaveformRow } from "../store/Store.ts";
import { StoreError } from "../store/StoreError.ts";
import {
  ARCHIVE_VERSION,
  anyManifest,
  FORMAT,
  MANIFEST,
  type Manifest,
  type ManifestPart,
  manifest,
  WAVEFORMS,
  type WaveformLine,
} from "./archiveForm.ts";
import { linesOf, textOf } from "./linesOf.ts";
import type { ZipEntry, ZipReader } from "./ZipReader.ts";

const MAX_MANIFEST = 64 * 1024 * 1024;
/** Progress is told so often. */
const STEP = 64;

/**
 * What an archive says of itself.
 * @throws StoreError  `newer` it comes from a newer program, `damaged` it is no archive of ours, or a broken one
 */
export function readManifest(zip: ZipReader): Manifest {
  const entry = zip.entries.get(MANIFEST);
  if (entry === undefined) throw zip.broken(`it is no archive of Holdfast (there is no ${MANIFEST} in it)`);
  const parsed = jsonIn(textOf(zip, entry, MAX_MANIFEST));
  const any = anyManifest.safeParse(parsed);
  if (!any.success) throw zip.broken(`it is no archive of Holdfast (${MANIFEST} does not say ${FORMAT})`);
  if (any.data.version > ARCHIVE_VERSION)
    throw new StoreError(
      "newer",
      `${zip.path} was made by a newer Holdfast (${String(any.data.program ?? "unknown").slice(0, 40)}). Nothing was taken over; install that version, or export from it in the older form.`,
    );
  const known = manifest.safeParse(parsed);
  if (!known.success) throw zip.broken(`${MANIFEST} is damaged: ${z.prettifyError(known.error).split("\n")[0]}`);
  return known.data;
}

/** The ledger of an archive as chains to be merged, read as the merging asks for it. */
export function chainsIn(zip: ZipReader, { parts, entries }: Manifest, watch: Watch): ForeignChain[] {
  const waveforms = new WaveformsInStep(zip, zip.entries.get(WAVEFORMS));
  let done = 0;
  const tell = () => {
    done += 1;
    if (done % STEP !== 0) return;
    watch.goOn();
    watch.progress(done, entries);
  };
  return parts.map((part) => ({
    origin: part.origin,
    after: part.after,
    entries: entriesOf(zip, part, waveforms, tell),
  }));
}

function* entriesOf(
  zip: ZipReader,
  { file, origin, after, entries, head }: ManifestPart,
  waveforms: WaveformsInStep,
  tell: () => void,
): Generator<ForeignEntry> {
  const member = zip.entries.get(file);
  if (member === undefined) throw zip.broken(`${file} is missing`);
  let count = 0;
  let last = "";
  for (const text of linesOf(zip, member)) {
    count += 1;
    if (count > entries) break;
    last = text;
    tell();
    yield { text, waveforms: waveforms.of(origin, after + count) };
  }
  if (count !== entries || sha256(last) !== head) throw zip.broken(`${file} does not end where the archive says`);
}

/** The readings stand in the order of their entries: one line is looked at ahead. */
class WaveformsInStep {
  readonly #zip: ZipReader;
  readonly #lines: Iterator<string> | undefined;
  #next: WaveformLine | undefined;

  constructor(zip: ZipReader, entry: ZipEntry | undefined) {
    this.#zip = zip;
    this.#lines = entry && linesOf(zip, entry);
    this.#advance();
  }

  of(origin: string, seq: number): WaveformRow[] | undefined {
    const own: WaveformRow[] = [];
    while (this.#next?.origin === origin && this.#next.seq === seq) {
      const { cycleId, sampleCount, hash, packed } = this.#next;
      own.push({ cycleId, sampleCount, hash, bytes: Buffer.from(packed, "base64") });
      this.#advance();
    }
    return own.length === 0 ? undefined : own;
  }

  #advance(): void {
    const line = this.#lines?.next();
    if (line === undefined || line.done === true) {
      this.#next = undefined;
      return;
    }
    const read = waveformLine.safeParse(jsonIn(line.value));
    if (!read.success) throw this.#zip.broken(`a line of ${WAVEFORMS} is damaged`);
    this.#next = read.data;
  }
}

const waveformLine = z.strictObject({
  origin: z.string(),
  seq: z.number(),
  cycleId: z.string(),
  sampleCount: z.number(),
  hash: z.string(),
  packed: z.string(),
});

function jsonIn(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return undefined; // the schema refuses it
  }
}
