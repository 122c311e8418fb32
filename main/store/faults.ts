import { StoreError, type StoreFault } from "./StoreError.ts";

/** What SQLite or the file system says, as one of our codes; undefined for a fault of the program. */
export function faultOf(cause: unknown): StoreFault | undefined {
  const code = (cause as { code?: unknown } | null)?.code;
  if (cause instanceof StoreError) return cause.code;
  if (typeof code !== "string") return undefined;
  return meanings.find(([pattern]) => pattern.test(code))?.[1];
}

const meanings: readonly (readonly [RegExp, StoreFault])[] = [
  [/^SQLITE_FULL|^ENOSPC$|^EDQUOT$/, "full"],
  [/^SQLITE_(CORRUPT|NOTADB)/, "damaged"],
  [/^SQLITE_(BUSY|LOCKED)/, "busy"],
  [/^SQLITE_(READONLY|PERM)|^E(ACCES|PERM|ROFS)$/, "readOnly"],
  [/^SQLITE_CONSTRAINT_(UNIQUE|PRIMARYKEY|ROWID)/, "conflict"],
  [/^SQLITE_IOERR/, "damaged"],
  [/^SQLITE_CANTOPEN|^ENOENT$/, "notFound"],
];

const words: Readonly<Record<StoreFault, string>> = {
  full: "The disk that holds the data file is full. Nothing of this was filed; what was filed before is safe. Make room on the disk and accept again.",
  damaged:
    "The disk refused, or returned damaged data. What was filed before is left as it is. Whether this was filed is not certain: nothing more is " +
    "written now; check the disk, start the program again, and look before you file it a second time.",
  busy: "A long act (an import or a restore) is writing to the data file. Nothing was filed; accept again when it is done.",
  readOnly:
    "The data file cannot be written: the file, its folder or its disk is write-protected. Nothing of this was filed. Give this user the right to write there.",
  conflict:
    "This is already filed, or something else was filed under the same number. Nothing was filed a second time.",
  notFound:
    "The data file, or its folder, is not there any more. Nothing of this was filed. Was a disk or stick taken out?",
  locked: "Another Holdfast has this data file open.",
  newer: "This data file was written by a newer Holdfast.",
  networkShare: "The data file lies on a network share.",
  demoMismatch: "Demo data and real data never share a file.",
};

/** Runs `work`; what SQLite or the disk refuses comes out as a `StoreError` in words, anything else as it was. */
export function inPlainWords<T>(work: () => T): T {
  try {
    return work();
  } catch (cause) {
    if (cause instanceof StoreError) throw cause;
    const fault = faultOf(cause);
    if (fault === undefined) throw cause;
    throw new StoreError(fault, words[fault], cause);
  }
}
