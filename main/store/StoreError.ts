/** Why the store refuses, as a closed list; the words for the operator stand in the message. */
export type StoreFault =
  | "locked" // another program has the data file open for writing
  | "busy" // a long act of this program (import, restore) is writing just now
  | "newer" // written by a newer program
  | "damaged"
  | "networkShare"
  | "readOnly" // medium or folder cannot be written, or opened for reading only
  | "full"
  | "notFound"
  | "demoMismatch" // demo data where real data belongs, or the other way round
  | "conflict"; // a chain that does not continue the one already here

/** A refusal in plain words: what happened, what is safe, what to do. The cause is for the log. */
export class StoreError extends Error {
  override name = "StoreError";
  readonly code: StoreFault;
  constructor(code: StoreFault, message: string, cause?: unknown) {
    super(message, cause === undefined ? undefined : { cause });
    this.code = code;
  }
}
