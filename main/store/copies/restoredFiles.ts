import { readdirSync, rmSync } from "node:fs";
import { join } from "node:path";

/** What a copy is called that lies restored beside the data file while it is decided on. */
export const restoredName = (nowMs: number): string =>
  `restored-${new Date(nowMs).toISOString().slice(0, 19).replace(/[-:]/g, "")}Z.sqlite`;

export const isRestoredName = (name: string): boolean => /^restored-\d{8}T\d{6}Z\.sqlite$/.test(name);

/** Takes away what was restored and not put in place: each is as large as the records. */
export function forgetRestored(folder: string): void {
  for (const name of namesIn(folder)) {
    if (!isRestoredName(name)) continue;
    for (const rest of ["", ".lock", ".part", ".part.lock"]) rmSync(join(folder, `${name}${rest}`), { force: true });
  }
}

function namesIn(folder: string): string[] {
  try {
    return readdirSync(folder);
  } catch {
    return []; // no folder yet: nothing was restored in it
  }
}
