import type { Look } from "./LiveWatch.ts";
import type { LiveTaking } from "./standOf.ts";

/** So long after it was told as ready a reading may be taken: the time an eye and a hand need (common practice, no source). */
const HAND_S = 1;

/** What was last told as ready: the hand that comes a moment later takes it, though a bar has stirred in between. */
export class ToldReady {
  #told: { readonly index: number | undefined; readonly taking: LiveTaking; readonly atS: number } | undefined;

  tell({ watch, taking }: Look, atS: number): void {
    if (taking !== undefined) this.#told = { index: watch.index, taking, atS };
  }

  /** What may be taken: what stands now, or of the same act what was told and has only stirred since. */
  atHand(now: Look, atS: number): LiveTaking | undefined {
    const told = this.#told;
    if (now.watch.why !== "notSteady" || told === undefined || told.index !== now.watch.index) return now.taking;
    return atS - told.atS <= HAND_S ? told.taking : undefined;
  }

  /** It has been taken, or something else is asked for. */
  forget(): void {
    this.#told = undefined;
  }
}
