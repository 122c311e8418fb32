import { existsSync } from "node:fs";
import { basename } from "node:path";
import type { Watch } from "../store/ledger/walkSlices.ts";
import type { Store } from "../store/Store.ts";
import { StoreError } from "../store/StoreError.ts";
import type { Manifest } from "./archiveForm.ts";
import { chainsIn, readManifest } from "./readArchive.ts";
import { ZipReader } from "./ZipReader.ts";

export type Imported = {
  readonly file: string;
  /** Entries that were not here before. */
  readonly added: number;
  readonly entries: number;
  readonly heads: Manifest["heads"];
};

/**
 * Takes an archive's records over, all or nothing: each entry is checked against its chain and its kind, each reading
 * against its hash. What is here already stays; the act itself is an entry of the own chain.
 * @throws StoreError  `notFound`, `damaged`, `newer`, `conflict`, `demoMismatch`, and what writing throws
 */
export function importArchive(store: Store, file: string, watch: Watch, operatorId: string | null = null): Imported {
  if (!existsSync(file)) throw new StoreError("notFound", `There is no file ${file}. Nothing was taken over.`);
  const zip = new ZipReader(file);
  try {
    const manifest = readManifest(zip);
    if (manifest.demo !== store.demo) throw new StoreError("demoMismatch", notMixed(file, manifest.demo));
    const detail = `archive ${basename(file)} of ${manifest.madeAt}`.slice(0, 500);
    const added = store.merge(chainsIn(zip, manifest, watch), { detail, operatorId });
    return { file, added, entries: manifest.entries, heads: manifest.heads };
  } finally {
    zip.close();
  }
}

const notMixed = (file: string, demo: boolean) =>
  demo
    ? `${file} holds invented data of the demo and is not taken into real records. Nothing was taken over.`
    : `${file} holds real records, which do not belong in the demo. Nothing was taken over.`;
