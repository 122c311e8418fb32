import { dirname } from "node:path";
import { freeBytes } from "./freeSpace.ts";
import { StoreError } from "./StoreError.ts";

/** What must be left on the disk before anything is filed: room for the log to be written back, and to leave in order. */
const RESERVE = 2 * 1024 * 1024;

/** With so much left the next look may wait. */
const PLENTY = 256 * 1024 * 1024;
const LOOK_MS = 2_000;

/** Stops the accepting before the disk is quite full. */
export class SpaceWatch {
  readonly #folder: string;
  #plentyUntilMs = Number.NEGATIVE_INFINITY; // by the process's own monotonic clock

  constructor(path: string) {
    this.#folder = dirname(path);
  }

  /** @throws StoreError  `full` */
  refuseWhenFull(): void {
    const nowMs = performance.now();
    if (nowMs < this.#plentyUntilMs) return;
    const free = freeBytes(this.#folder);
    if (free === undefined) return;
    if (free >= PLENTY) this.#plentyUntilMs = nowMs + LOOK_MS;
    if (free >= RESERVE) return;
    throw new StoreError(
      "full",
      `The disk that holds the data file is full (${Math.floor(free / 1024)} KB left). Nothing of this was filed; what was ` +
        "filed before is safe. Make room on the disk and accept again.",
    );
  }
}
