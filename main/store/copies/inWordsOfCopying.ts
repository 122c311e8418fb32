import { faultOf } from "../faults.ts";
import { StoreError } from "../StoreError.ts";

/** What went wrong while a copy was made, for the operator. A fault of the program comes out as it was. */
export function inWordsOfCopying(cause: unknown, what: "backup" | "restore", folder: string): unknown {
  const fault = faultOf(cause);
  if (fault === undefined || cause instanceof StoreError) return cause;
  if (fault === "full") {
    return new StoreError(
      "full",
      `The ${what} did not fit into ${folder}: the disk is full. Nothing of it was left there; the records are untouched.`,
      cause,
    );
  }
  if (fault === "readOnly") {
    return new StoreError(
      "readOnly",
      `The folder ${folder} cannot be written. The records are untouched; give the right to write, or choose another folder.`,
      cause,
    );
  }
  if (fault === "notFound") return new StoreError("notFound", folderGone(folder), cause);
  const said = cause instanceof Error ? cause.message : String(cause);
  return new StoreError(
    fault,
    `The ${what} into ${folder} failed: the disk refused (${said}). The records are untouched; try another disk or stick.`,
    cause,
  );
}

export const folderGone = (folder: string) =>
  `The folder ${folder} is not there. Was the stick taken out, or is the share not connected? The records are untouched.`;
