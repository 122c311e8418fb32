import type { LinkProblem } from "./LinkProblem.ts";

/** Where a source's bytes and its end go. */
export type ByteSink = {
  /** The next bytes, never none. They are lent until the call returns: who keeps them copies them. */
  onBytes(chunk: Uint8Array): void;
  /** A recording says that bytes are missing here: what comes next does not belong to what came before. */
  onGap?(why: string): void;
  /**
   * Called once, after the last `onBytes`, unless `close` was called before. Undefined: the source came to
   * its own end (a file, standard input); else why the bytes stopped.
   */
  onClosed(why: LinkProblem | undefined): void;
};

/**
 * Anything that brings a gauge's bytes. It is used once: `open`, bytes, the end or `close`; a link that
 * comes back is a new source. No source looks into the bytes, and none keeps any.
 */
export type ByteSource = {
  /** The name a user knows it by. */
  readonly label: string;
  /** Resolves when bytes may come; rejects with a `LinkError`. A source that `close` overtook rejects with `aborted`. */
  open(sink: ByteSink): Promise<void>;
  /** Sends to the gauge; resolves when the system has taken it. Files and standard input cannot: rejects. */
  write(bytes: Uint8Array): Promise<void>;
  /**
   * Asks it to wait (`true`) or go on. A file waits; what comes from a gauge does not wait and has no `hold`. A few
   * bytes may still come after the call.
   */
  hold?(on: boolean): void;
  /** Ends it, at any time and more than once. No call reaches the sink afterwards. */
  close(): Promise<void>;
};
