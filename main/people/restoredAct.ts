import { basename } from "node:path";
import type { EntryDraft } from "../store/Store.ts";

/** A copy was put in the place of the data file: by whom, and where the old file went. */
export function restoredAct({ file, operatorId }: { file: string; operatorId: string | undefined }): EntryDraft {
  const detail = `put in the place of the data file; the one before is kept as ${basename(file)}`;
  return { kind: "act", body: { what: "restored", detail, operatorId: operatorId ?? null } };
}
