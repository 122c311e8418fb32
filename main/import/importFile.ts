import type { Imported, ImportPreview, ListFile, ListKind } from "../../app/contract/importViews.ts";
import type { Db } from "../store/db.ts";
import { sha256 } from "../store/ledger/sha256.ts";
import { readWorks } from "../store/records/works.ts";
import type { EntryDraft, Store } from "../store/Store.ts";
import { uuidV7 } from "../store/uuidV7.ts";
import { worksOutOfTheBox } from "../worksOutOfTheBox.ts";
import { fileChecks } from "./checks/fileChecks.ts";
import { registerOf } from "./checks/Register.ts";
import { readChecks } from "./checks/readChecks.ts";
import { knownLabels } from "./knownLabels.ts";
import { openTable } from "./openTable.ts";
import { type RegisterFile, readList } from "./readList.ts";

const kinds = { spindles: "spindle", adapters: "adapter", gauges: "gauge" } as const satisfies Record<ListKind, string>;

/** Why nothing was imported, in words. */
export class ImportStopped extends Error {
  override name = "ImportStopped";
}

/** When, by which program and whom; and whom to tell how far it is. */
type Circumstances = {
  readonly nowMs: number;
  readonly programVersion: string;
  readonly operatorId?: string | undefined;
} & Watch;
type Watch = { readonly goOn: () => void; readonly progress: (done: number, total: number) => void };

/** What a file would bring into the records, and what stands against it; nothing is filed. */
export async function previewFile(file: ListFile, db: Db, nowMs: number, goOn: () => void): Promise<ImportPreview> {
  const table = await openTable(file);
  const newId = () => uuidV7(nowMs);
  if (!isOfRegister(file)) return readChecks(file, table, registerOf(db, worksIn(db, newId), nowMs), goOn).preview;
  return readList(file, table, knownLabels(db, file.what), newId, goOn).preview;
}

/**
 * Takes a file into the records, all of it in one transaction with an entry that names it, or nothing.
 * @throws ImportStopped  what stands against it
 * @throws what writing and `goOn` throw; nothing stands then
 */
export async function importFile(
  store: Store,
  file: ListFile,
  { nowMs, programVersion, operatorId, goOn, progress }: Circumstances,
): Promise<Imported> {
  const table = await openTable(file);
  const newId = () => store.newId();
  if (isOfRegister(file)) {
    const { preview, bodies } = readList(file, table, knownLabels(store.db, file.what), newId, goOn);
    refuse(preview);
    goOn(); // the last moment at which stopping costs nothing
    progress(0, bodies.length);
    return fileList(store, file, bodies, { passedOver: preview.passedOver, operatorId });
  }
  const works = worksIn(store.db, newId);
  const read = readChecks(file, table, registerOf(store.db, works, nowMs), goOn);
  if (nothingNew(read.preview)) return { importId: undefined, imported: 0, passedOver: read.preview.passedOver };
  refuse(read.preview);
  return fileChecks({ store, file, read, works, programVersion, operatorId, goOn, progress });
}

const isOfRegister = (file: ListFile): file is RegisterFile => file.what !== "checks";

const worksIn = (db: Db, newId: () => string) => readWorks(db) ?? worksOutOfTheBox(newId());

function fileList(
  store: Store,
  { what, fileName, base64 }: RegisterFile,
  bodies: readonly Record<string, unknown>[],
  { passedOver, operatorId }: { readonly passedOver: number; readonly operatorId: string | undefined },
): Imported {
  const importId = store.newId();
  const fileHash = sha256(Buffer.from(base64, "base64"));
  const drafts = bodies.map((body) => ({ kind: kinds[what], body }) as EntryDraft); // its schema has just taken it
  const by = operatorId === undefined ? {} : { operatorId };
  store.append([
    ...drafts,
    { kind: "import", body: { importId, fileName, fileHash, entries: bodies.length, what, ...by } },
  ]);
  return { importId, imported: bodies.length, passedOver };
}

/** Every check of the file is in the records already, and nothing else stands against it. */
const nothingNew = ({ ready, passedOver, problems }: ImportPreview) =>
  ready === 0 && passedOver > 0 && !problems.some((p) => p.weight === "stops");

function refuse({ stopped, problems }: ImportPreview): void {
  if (!stopped) return;
  const first = problems.find((p) => p.weight === "stops")?.message ?? "There is no row to import.";
  throw new ImportStopped(`Nothing was imported. ${first}`);
}
