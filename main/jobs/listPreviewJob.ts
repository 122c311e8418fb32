import type { ImportPreview } from "../../app/contract/importViews.ts";
import { listFile } from "../../app/contract/importViews.ts";
import { knownLabels } from "../import/knownLabels.ts";
import { readList } from "../import/readList.ts";
import { uuidV7 } from "../store/uuidV7.ts";
import { defineJob } from "./Job.ts";

/** What a list would bring into the register; nothing is filed. */
export const job = defineJob({
  args: listFile,
  run: (file, { db, goOn }): ImportPreview =>
    readList(file, knownLabels(db, file.what), () => uuidV7(Date.now()), goOn).preview,
});
