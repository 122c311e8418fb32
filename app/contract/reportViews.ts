import type { MadeFile } from "./roundViews.ts";

/** Where a chain ends. */
export type ArchiveHead = { readonly origin: string; readonly entries: number; readonly head: string };

export type ArchiveMade = {
  readonly file: string;
  readonly bytes: number;
  readonly entries: number;
  readonly waveforms: number;
  readonly heads: readonly ArchiveHead[];
  /** Entries and readings that are damaged or gone; `damaged.txt` in the archive names them. */
  readonly leftOut: number;
};

export type ArchiveTaken = {
  readonly file: string;
  /** Entries that were not here before. */
  readonly added: number;
  readonly entries: number;
  readonly heads: readonly ArchiveHead[];
};

/** One published check as it came out here. */
export type ValidationCase = {
  /** The published file's id and the case in it. */
  readonly id: string;
  readonly what: string;
  readonly source: string;
  readonly expected: string;
  readonly got: string;
  /** How far they may differ. */
  readonly within: string;
  readonly pass: boolean;
};

export type Validation = {
  readonly program: string;
  /** SHA-256 of the measuring core; null where its sources are not beside the program. */
  readonly programHash: string | null;
  readonly runtime: string;
  readonly madeAt: string;
  readonly cases: readonly ValidationCase[];
  /** Ids of those that did not pass. */
  readonly failed: readonly string[];
};

export type ValidationMade = Validation & { readonly report: MadeFile };

/** What `people.export` finishes with. */
export type PersonExported = { readonly file: string; readonly bytes: number; readonly entries: number };
