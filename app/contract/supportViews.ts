import type { MadeFile } from "./roundViews.ts";

/** What `support.collect` finishes with: every text, to be looked into, and the archive that holds the same. */
export type SupportMade = {
  readonly files: readonly { readonly name: string; readonly bytes: number; readonly text: string }[];
  readonly zip: MadeFile;
};

/** Something of this works on this PC: what it is, where it lies, how large. */
export type DataPlace = {
  readonly what: "dataFile" | "spool" | "log" | "key" | "settings" | "backups" | "before";
  readonly path: string;
  /** Undefined: it is not there, or cannot be seen. */
  readonly bytes: number | undefined;
};
