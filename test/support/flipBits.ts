import { rmSync, writeFileSync } from "node:fs";
import { verifyFile } from "../../main/store/ledger/verifyFile.ts";
import { openStore } from "../../main/store/open.ts";
import { StoreError } from "../../main/store/StoreError.ts";
import { invented } from "./aCheck.ts";
import { everythingRead } from "./everythingRead.ts";

export type FlipOutcome = { flips: number; changed: number; found: number; refused: number; missed: string[] };

/**
 * Flips single bits of a data file, each in a fresh copy, and asks: does any query answer otherwise, and if so, does
 * `verify` find damage (or the file refuse to open)? A throw that is no refusal in plain words ends it.
 */
export async function flipBits(bytes: Buffer, path: string, count: number, seed: number): Promise<FlipOutcome> {
  const next = invented(seed);
  writeFileSync(path, bytes);
  const clean = lookAt(path, (db) => everythingRead(db)) as string;
  const outcome: FlipOutcome = { flips: count, changed: 0, found: 0, refused: 0, missed: [] };
  for (let i = 0; i < count; i += 1) {
    const bit = Math.floor(next() * bytes.length * 8);
    const flipped = Buffer.from(bytes);
    flipped[bit >> 3]! ^= 1 << (bit & 7);
    for (const rest of ["-wal", "-shm"]) rmSync(`${path}${rest}`, { force: true });
    await new Promise(setImmediate); // what closed files held is let go between turns only
    writeFileSync(path, flipped);
    const answers = lookAt(path, (db) => everythingRead(db));
    if (answers === clean) continue;
    outcome.changed += 1;
    if (answers === undefined) outcome.refused += 1;
    else if ((await lookAt(path, (db) => verifyFile(db)))!.damagedCount > 0) outcome.found += 1;
    else outcome.missed.push(`bit ${bit & 7} of byte ${bit >> 3} (page ${Math.floor((bit >> 3) / 4096) + 1})`);
  }
  return outcome;
}

/** Undefined: the file was refused in plain words. */
export function lookAt<T>(path: string, look: (db: ReturnType<typeof openStore>["db"]) => T): T | undefined {
  let store: ReturnType<typeof openStore>;
  try {
    store = openStore({ path, readOnly: true, now: () => 0 });
  } catch (cause) {
    if (cause instanceof StoreError) return undefined;
    throw cause;
  }
  const closing = () => store.close();
  try {
    const seen = look(store.db);
    if (seen instanceof Promise) return seen.finally(closing) as T;
    closing();
    return seen;
  } catch (cause) {
    closing();
    throw cause;
  }
}
