import type { Readable } from "node:stream";

/** What a subcommand may touch. Tests hand in their own; the program hands in the process's. */
export type CommandIo = {
  readonly stdin: Readable;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
  readonly env: Readonly<Record<string, string | undefined>>;
  /** Aborted on Ctrl-C: long commands stop cleanly. */
  readonly signal: AbortSignal;
};

/** One subcommand a file; the file's name is the command's. */
export type Command = {
  /** One line for `holdfast help`, the arguments first. */
  readonly usage: string;
  /** Does the work and answers the exit code: 0 done, 3 data damaged or validation failed. Throws `UsageError` for 2. */
  readonly run: (args: readonly string[], io: CommandIo) => Promise<number>;
};

/** Wrong use or bad input: exit 2, one line on stderr that says what, where, and what to do. */
export class UsageError extends Error {
  override name = "UsageError";
}
