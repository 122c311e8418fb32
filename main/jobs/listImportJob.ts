import { createHash } from "node:crypto";
import { type Imported, type ImportedKind, listFile } from "../../app/contract/importViews.ts";
import { knownLabels } from "../import/knownLabels.ts";
import { readList } from "../import/readList.ts";
import type { EntryDraft } from "../store/Store.ts";
import { defineJob } from "./Job.ts";
import { JobError } from "./JobError.ts";

const kinds = { spindles: "spindle", adapters: "adapter", gauges: "gauge" } as const satisfies Record<
  ImportedKind,
  string
>;

/** Takes a list into the register: all of it in one transaction, with an entry that names the file, or nothing. */
export const job = defineJob({
  files: true,
  args: listFile,
  run(file, { openStore, goOn, progress }): Imported {
    const store = openStore();
    const { preview, bodies } = readList(file, knownLabels(store.db, file.what), () => store.newId(), goOn);
    if (preview.stopped) {
      const first = preview.problems.find((p) => p.weight === "stops")?.message ?? "There is no row to import.";
      throw new JobError("badRequest", `Nothing was imported. ${first}`);
    }
    goOn(); // the last moment at which stopping costs nothing
    progress(0, bodies.length);
    const importId = store.newId();
    const fileHash = createHash("sha256").update(Buffer.from(file.base64, "base64")).digest("hex");
    const drafts = bodies.map((body) => ({ kind: kinds[file.what], body }) as EntryDraft); // its schema has just taken it
    store.append([
      ...drafts,
      { kind: "import", body: { importId, fileName: file.fileName, fileHash, entries: bodies.length } },
    ]);
    return { importId, imported: bodies.length, passedOver: preview.passedOver };
  },
});
