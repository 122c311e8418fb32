import { readFileSync, writeFileSync } from "node:fs";
import { strToU8, unzipSync, zipSync } from "fflate";
import { exportArchive } from "../../main/archive/exportArchive.ts";
import type { Store } from "../../main/store/Store.ts";

export const quietWatch = { progress: () => {}, goOn: () => {} };

/** Exports a store as the program does. */
export function exported(store: Store, file: string, waveforms = true) {
  const { db, demo } = store;
  return exportArchive(db, { file, waveforms, demo, program: "0.1.0", nowMs: Date.UTC(2024, 4, 1), watch: quietWatch });
}

/** An archive's members as texts, read by another library. */
export function membersOf(file: string): Record<string, string> {
  const decode = (bytes: Uint8Array) => Buffer.from(bytes).toString("utf8");
  return Object.fromEntries(
    Object.entries(unzipSync(readFileSync(file))).map(([name, bytes]) => [name, decode(bytes)]),
  );
}

/** Writes texts as an archive, by another library. */
export function writeMembers(file: string, members: Record<string, string>): string {
  writeFileSync(
    file,
    zipSync(Object.fromEntries(Object.entries(members).map(([name, text]) => [name, strToU8(text)]))),
  );
  return file;
}
