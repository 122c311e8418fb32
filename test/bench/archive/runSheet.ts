import { readFileSync } from "node:fs";
import { basename } from "node:path";
import type { ListFile } from "../../../app/contract/importViews.ts";
import { importFile, previewFile } from "../../../main/import/importFile.ts";
import { openStore } from "../../../main/store/open.ts";

/** What looking at a spreadsheet and importing it took. */
export type SheetRun = { readonly previewS: number; readonly importS: number; readonly peakBytes: number };

const [path, file] = process.argv.slice(2) as [string, string];
const watch = { progress: () => {}, goOn: () => {} };
const store = openStore({ path, now: Date.now, machine: "bench" });
const sheet: ListFile = { what: "checks", fileName: basename(file), base64: readFileSync(file).toString("base64") };
const startedAt = performance.now();
const { names } = await previewFile(sheet, store.db, Date.now(), watch.goOn);
const lookedAt = performance.now();
const answered = { ...sheet, names: names.map(({ thing, name }) => ({ thing, name, to: "create" as const })) };
await importFile(store, answered, { nowMs: Date.now(), programVersion: "bench", ...watch });
store.close();
process.send?.({
  previewS: (lookedAt - startedAt) / 1000,
  importS: (performance.now() - lookedAt) / 1000,
  peakBytes: process.resourceUsage().maxRSS * 1024,
} satisfies SheetRun);
