import { appendFileSync, mkdirSync, renameSync, statSync } from "node:fs";
import { join } from "node:path";
import { personalHere, redact } from "./support/redact.ts";

/** Words for us, not for the operator: no names, no notes, no tokens go in. */
export type Log = {
  readonly info: (text: string) => void;
  readonly warn: (text: string) => void;
  readonly error: (text: string, cause?: unknown) => void;
};

const KEEP = 4; // files of half a megabyte each
const MAX_BYTES = 512 * 1024;

/**
 * Writes `holdfast.log` in a folder and turns it over at half a megabyte. A log that cannot be written is let go: measuring goes on.
 * @param names  of people, to be kept out of it
 */
export function fileLog(folder: string, now: () => number, names: () => readonly string[] = () => []): Log {
  const path = join(folder, "holdfast.log");
  const write = (level: string, text: string) => {
    try {
      mkdirSync(folder, { recursive: true, mode: 0o700 });
      turnOver(path);
      const clean = redact(text, personalHere(names()));
      appendFileSync(path, `${new Date(now()).toISOString()} ${level} ${clean}\n`, { mode: 0o600 });
    } catch {
      // Nowhere to say it.
    }
  };
  return {
    info: (text) => write("info", text),
    warn: (text) => write("warn", text),
    error: (text, cause) => write("error", cause === undefined ? text : `${text}: ${describe(cause)}`),
  };
}

export const silentLog: Log = { info: () => undefined, warn: () => undefined, error: () => undefined };

function describe(cause: unknown): string {
  return cause instanceof Error ? (cause.stack ?? cause.message) : String(cause);
}

function turnOver(path: string): void {
  if ((statSync(path, { throwIfNoEntry: false })?.size ?? 0) < MAX_BYTES) return;
  for (let i = KEEP - 1; i >= 1; i -= 1) {
    const from = i === 1 ? path : `${path}.${i - 1}`;
    if (statSync(from, { throwIfNoEntry: false })) renameSync(from, `${path}.${i}`);
  }
}
