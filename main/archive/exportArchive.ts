import { existsSync, renameSync } from "node:fs";
import { dirname } from "node:path";
import { canonicalJson } from "../../app/ledger/canonicalJson.ts";
import { syncFolder } from "../store/copies/copyDatabase.ts";
import { folderGone } from "../store/copies/inWordsOfCopying.ts";
import type { Db } from "../store/db.ts";
import { DamageList } from "../store/ledger/DamageList.ts";
import { type ReadableEntry, readableEntries } from "../store/ledger/readableEntries.ts";
import { allWithText } from "../store/ledger/readEntry.ts";
import { signedHeads } from "../store/ledger/signedHeads.ts";
import { entryCount } from "../store/ledger/slices.ts";
import type { Watch } from "../store/ledger/walkSlices.ts";
import type { FiledEntry } from "../store/Store.ts";
import { StoreError } from "../store/StoreError.ts";
import { wordsOf } from "../store/wordsOf.ts";
import { ARCHIVE_VERSION, FORMAT, MANIFEST, type Manifest, type ManifestPart, WAVEFORMS } from "./archiveForm.ts";
import { CsvFiles } from "./CsvFiles.ts";
import { CSVW, csvwMetadata } from "./csvwMetadata.ts";
import { inWordsOfExport } from "./inWordsOfExport.ts";
import { readmeText } from "./readmeText.ts";
import { salvageNotes } from "./salvageNotes.ts";
import { waveformsOf } from "./waveformsOf.ts";
import type { ZipMember } from "./ZipMember.ts";
import { ZipWriter } from "./ZipWriter.ts";

export type ExportOptions = {
  readonly file: string;
  /** Whether the readings go along. */
  readonly waveforms: boolean;
  readonly program: string;
  readonly demo: boolean;
  readonly nowMs: number;
  readonly watch: Watch;
  /** The records are known to be damaged: what can be read is written, what cannot is named. */
  readonly salvage?: boolean;
};

export type Exported = {
  readonly file: string;
  readonly bytes: number;
  readonly entries: number;
  readonly waveforms: number;
  readonly heads: Manifest["heads"];
  /** Entries that are damaged or gone; 0 unless it was salvaged. */
  readonly leftOut: number;
};

/** So often the walk looks up: lets the deflating catch up, tells progress, may stop. */
const STEP = 64;

/**
 * Writes everything that is filed into one archive in open formats: the ledger as JSON Lines, from which it can be
 * taken over again to the byte, and every kind as CSV with its description. The ledger is walked once, as it stood
 * when the walk began; memory stays flat.
 * @throws StoreError  `conflict` the file is there already, `notFound`, `full`, `readOnly`
 */
export async function exportArchive(db: Db, options: ExportOptions): Promise<Exported> {
  const { file, nowMs } = options;
  if (!existsSync(dirname(file))) throw new StoreError("notFound", folderGone(dirname(file)));
  if (existsSync(file))
    throw new StoreError("conflict", `There is already a file ${file}. Name another; nothing was written over.`);
  const zip = new ZipWriter(`${file}.part`, nowMs);
  db.exec("BEGIN");
  try {
    const { manifest, waveforms, leftOut } = await fill(db, zip, options);
    const bytes = await zip.finish(options.watch.goOn);
    renameSync(zip.path, file);
    syncFolder(dirname(file));
    return { file, bytes, entries: manifest.entries, heads: manifest.heads, waveforms, leftOut };
  } catch (cause) {
    await zip.discard();
    throw inWordsOfExport(cause, dirname(file));
  } finally {
    db.exec("COMMIT");
  }
}

async function fill(db: Db, zip: ZipWriter, options: ExportOptions) {
  const { program, demo, waveforms: withWaveforms, watch } = options;
  const madeAt = new Date(options.nowMs).toISOString();
  zip.member("README.txt").write(readmeText({ program, madeAt, withWaveforms }));
  const manifestMember = zip.member(MANIFEST);
  const csvwMember = zip.member(CSVW);
  const packed = withWaveforms ? zip.member(WAVEFORMS, 1) : undefined;
  const csv = new CsvFiles(zip, withWaveforms);
  const ledger = new LedgerParts(zip);
  const damage = new DamageList();
  const salvage = options.salvage === true ? new Salvage(zip, damage) : undefined;
  const total = salvage === undefined ? entryCount(db) : 0; // of a damaged file nobody knows
  let [entries, waveforms] = [0, 0];
  for (const { entry, text, state } of salvage === undefined ? wholeEntries(db) : readableEntries(db, damage)) {
    if (state === "whole") ledger.take(entry, text);
    else salvage?.take(entry, state);
    if (state === "doubtful") continue;
    csv.take(entry);
    if (packed !== undefined) {
      for (const { line, csvText } of readings(db, entry, salvage && damage)) {
        packed.write(line);
        csv.waveform(csvText);
        waveforms += 1;
      }
    }
    entries += 1;
    if (entries % STEP !== 0) continue;
    watch.goOn();
    watch.progress(entries, Math.max(total, entries));
    await Promise.all([ledger.room(), packed?.room(), csv.room(), salvage?.room()]);
  }
  salvage?.end();
  const manifest: Manifest = {
    format: FORMAT,
    version: ARCHIVE_VERSION,
    program,
    madeAt,
    demo,
    waveforms: withWaveforms,
    entries: ledger.count,
    heads: ledger.heads(),
    parts: ledger.parts,
    signedHeads: salvage === undefined ? signedHeads(db).map((head) => ({ ...head })) : [],
  };
  manifestMember.write(`${JSON.stringify(manifest, null, 1)}\n`);
  csvwMember.write(
    `${JSON.stringify(csvwMetadata(csv.tables, { program: `Holdfast ${program}`, madeAt }), null, 1)}\n`,
  );
  return { manifest: { ...manifest, entries }, waveforms, leftOut: damage.count };
}

function* wholeEntries(db: Db): Generator<ReadableEntry> {
  try {
    for (const stored of allWithText(db)) yield { ...stored, state: "whole" };
  } catch (cause) {
    // Unpacking or parsing it failed; what SQLite says of its pages is in words of its own.
    if (!isUnreadable(cause)) throw cause;
    throw new StoreError(
      "damaged",
      "An entry cannot be read: the records are damaged. Verify them; after that an export writes what can be read and names what cannot.",
      cause,
    );
  }
}

const isUnreadable = (cause: unknown) =>
  cause instanceof SyntaxError ||
  cause instanceof RangeError ||
  String((cause as { code?: unknown }).code).startsWith("Z_");

/** @param damage  readings that cannot be read are named there; absent: they end the export */
function readings(db: Db, entry: FiledEntry, damage: DamageList | undefined): ReturnType<typeof waveformsOf> {
  if (damage === undefined) return waveformsOf(db, entry);
  try {
    return waveformsOf(db, entry);
  } catch (cause) {
    const { origin, seq, n: place } = entry;
    damage.add({
      what: "waveform",
      origin,
      seq,
      place,
      fault: "unreadable",
      detail: `readings of entry ${seq}: ${wordsOf(cause)}`,
    });
    return [];
  }
}

/** What of a damaged file does not belong into the ledger's own lines. */
class Salvage {
  readonly #zip: ZipWriter;
  readonly #damage: DamageList;
  readonly #beyond: ZipMember;
  readonly #doubtful: ZipMember;
  #counts = { loose: 0, doubtful: 0 };

  constructor(zip: ZipWriter, damage: DamageList) {
    this.#zip = zip;
    this.#damage = damage;
    this.#beyond = zip.member("beyond.jsonl");
    this.#doubtful = zip.member("doubtful.jsonl");
  }

  take({ hash: _hash, n: _place, ...entry }: FiledEntry, state: "loose" | "doubtful"): void {
    this.#counts[state] += 1;
    (state === "loose" ? this.#beyond : this.#doubtful).write(`${canonicalJson(entry)}\n`);
  }

  async room(): Promise<void> {
    await Promise.all([this.#beyond.room(), this.#doubtful.room()]);
  }

  end(): void {
    this.#zip.member("damaged.txt").write(salvageNotes(this.#damage, this.#counts.loose, this.#counts.doubtful));
  }
}

/** The ledger's own lines: a file for each stretch of one origin, in the order in which they were filed. */
class LedgerParts {
  readonly parts: ManifestPart[] = [];
  readonly #zip: ZipWriter;
  #member: ZipMember | undefined;

  constructor(zip: ZipWriter) {
    this.#zip = zip;
  }

  /** @param text  the entry's canonical form */
  take(entry: FiledEntry, text: string): void {
    const { hash } = entry;
    const last = this.parts.at(-1);
    if (this.#member !== undefined && last?.origin === entry.origin) {
      this.parts[this.parts.length - 1] = { ...last, entries: last.entries + 1, head: hash };
    } else {
      const file = `ledger/${String(this.parts.length + 1).padStart(4, "0")}.jsonl`;
      this.#member = this.#zip.member(file);
      this.parts.push({ file, origin: entry.origin, after: entry.seq - 1, entries: 1, head: hash });
    }
    this.#member.write(`${text}\n`);
  }

  get count(): number {
    return this.parts.reduce((sum, part) => sum + part.entries, 0);
  }

  async room(): Promise<void> {
    await this.#member?.room();
  }

  heads(): Manifest["heads"] {
    const heads = new Map<string, { origin: string; entries: number; head: string }>();
    for (const { origin, after, entries, head } of this.parts)
      heads.set(origin, { origin, entries: after + entries, head });
    return [...heads.values()];
  }
}
