import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

/** One part of one session's spool, as it lies in the folder. */
export type SpoolFile = {
  readonly path: string;
  readonly sessionId: string;
  /** From 1; a session that runs long goes on in the next part. */
  readonly part: number;
  readonly bytes: number;
  readonly modifiedMs: number;
};

/** The name of a part: the session's id and the part's number. */
export function spoolPath(folder: string, sessionId: string, part: number): string {
  return join(folder, `${sessionId}.${String(part).padStart(4, "0")}.spool`);
}

/** Every part in the folder, oldest first; parts of one session in order. An absent folder holds none. */
export function listSpools(folder: string): readonly SpoolFile[] {
  const found: SpoolFile[] = [];
  for (const name of namesIn(folder)) {
    const match = /^([0-9a-zA-Z-]{1,64})\.(\d{4,})\.spool$/.exec(name);
    const stat = match === null ? undefined : statSync(join(folder, name), { throwIfNoEntry: false });
    if (match === null || stat === undefined) continue;
    found.push({
      path: join(folder, name),
      sessionId: match[1]!,
      part: Number(match[2]),
      bytes: stat.size,
      modifiedMs: stat.mtimeMs,
    });
  }
  return found.sort((a, b) =>
    a.sessionId === b.sessionId ? a.part - b.part : a.modifiedMs - b.modifiedMs || (a.sessionId < b.sessionId ? -1 : 1),
  );
}

/** Parts a kill has left half rewritten; the part itself still stands beside each. */
export function leftovers(folder: string): readonly string[] {
  return namesIn(folder)
    .filter((name) => name.endsWith(".spool.new"))
    .map((name) => join(folder, name));
}

function namesIn(folder: string): readonly string[] {
  try {
    return readdirSync(folder);
  } catch (cause) {
    if ((cause as NodeJS.ErrnoException).code === "ENOENT") return [];
    throw cause;
  }
}
