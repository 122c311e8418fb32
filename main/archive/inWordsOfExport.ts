import { faultOf } from "../store/faults.ts";
import { StoreError } from "../store/StoreError.ts";

/** What went wrong while an archive was written, for the operator. A fault of the program comes out as it was. */
export function inWordsOfExport(cause: unknown, folder: string): unknown {
  const fault = faultOf(cause);
  if (fault === undefined || cause instanceof StoreError) return cause;
  if (fault === "full")
    return new StoreError(
      "full",
      `The disk with ${folder} is full. The archive was not finished and nothing of it was left there; the records are untouched.`,
      cause,
    );
  if (fault === "readOnly")
    return new StoreError(
      "readOnly",
      `The folder ${folder} cannot be written. Choose another one; the records are untouched.`,
      cause,
    );
  const said = cause instanceof Error ? cause.message : String(cause);
  return new StoreError(
    fault,
    `The archive could not be written into ${folder}: ${said}. The records are untouched.`,
    cause,
  );
}
