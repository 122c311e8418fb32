import { statSync } from "node:fs";
import type { Db } from "./db.ts";

/** Between two looks at the log, in writings: an accept writes some forty kilobytes. */
const LOOK_EVERY = 32;

/** From so many bytes on the log is to be written back. It is used over again from the start, so it stays about that long. */
const LONG = 4 * 1024 * 1024;

/** Without help the log is not let grow beyond: then the writing does it by the way. In pages. */
const FAR_TOO_LONG = 25_000;

/** Says when the log has grown so long that it should be written back. */
export class LogWatch {
  readonly #log: string;
  readonly #call: () => void;
  #writings = 0;

  constructor(db: Db, path: string, call: () => void) {
    this.#log = `${path}-wal`;
    this.#call = call;
    db.pragma(`wal_autocheckpoint = ${FAR_TOO_LONG}`);
  }

  wrote(): void {
    this.#writings += 1;
    if (this.#writings % LOOK_EVERY === 0 && lengthOf(this.#log) >= LONG) this.#call();
  }
}

function lengthOf(path: string): number {
  try {
    return statSync(path).size;
  } catch {
    return 0;
  }
}
