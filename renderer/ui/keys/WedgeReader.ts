/** Keys closer together than this come from a scanner, not from a finger. */
export const WEDGE_GAP_MS = 80;
/** Shorter runs are no label. */
const LEAST_LENGTH = 3;

/**
 * Tells a scanner's typing from a finger's on the same keyboard: a run of quick keys ended by Enter is a label, a key that stands
 * alone is a key. It takes one key at a time with its time and answers what is now known.
 */
export class WedgeReader {
  #run = "";
  #lastMs = Number.NEGATIVE_INFINITY;

  /** True while a run is under way: a blank then belongs to the label and is no command. */
  inRun(atMs: number): boolean {
    return this.#run !== "" && atMs - this.#lastMs < WEDGE_GAP_MS;
  }

  /** A printing key. What stood before a pause is given up. */
  key(character: string, atMs: number): void {
    if (!this.inRun(atMs)) this.#run = "";
    this.#run += character;
    this.#lastMs = atMs;
  }

  /** Enter: the label just scanned, if one was. */
  enter(atMs: number): string | undefined {
    const run = this.inRun(atMs) ? this.#run.trim() : "";
    this.#run = "";
    return run.length >= LEAST_LENGTH ? run : undefined;
  }

  /** No key came for the gap's length: the single key that was pressed, if it was single. */
  pause(): string | undefined {
    const run = this.#run;
    this.#run = "";
    return run.length === 1 ? run : undefined;
  }
}
