import type { ImportPreview } from "../../app/contract/importViews.ts";
import { listFile } from "../../app/contract/importViews.ts";
import { previewFile } from "../import/importFile.ts";
import { defineJob } from "./Job.ts";

/** What a list or a file of old checks would bring into the records; nothing is filed. */
export const job = defineJob({
  args: listFile,
  run: (file, { db, goOn }): Promise<ImportPreview> => previewFile(file, db, Date.now(), goOn),
});
