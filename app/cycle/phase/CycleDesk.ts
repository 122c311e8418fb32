import { inOrder, withZero } from "../buildCycle.ts";
import type { Cycle, Rest, Waveform } from "../Cycle.ts";

export type EmitCycle = (cycle: Cycle, waveform: Waveform) => void;

/**
 * Holds a cycle back until the rest after it is known: only that tells whether it was released, and whether the rest
 * before it had been strained.
 */
export class CycleDesk {
  readonly #emit: EmitCycle;
  #waiting: { cycle: Cycle; waveform: Waveform; residualN: number } | undefined;

  constructor(emit: EmitCycle) {
    this.#emit = emit;
  }

  get waiting(): boolean {
    return this.#waiting !== undefined;
  }

  /** More than this above the zero is residual force of the cycle that waits. */
  get residualN(): number | undefined {
    return this.#waiting?.residualN;
  }

  put(cycle: Cycle, waveform: Waveform, residualN: number): void {
    this.release(undefined, false);
    this.#waiting = { cycle, waveform, residualN };
  }

  /**
   * Hands out the waiting cycle.
   * @param rest  the rest after it; undefined when there was none
   * @param strained  residual force stood there, or the next clamping began before the force had come down
   */
  release(rest: Rest | undefined, strained: boolean): void {
    const waiting = this.#waiting;
    if (waiting === undefined) return;
    this.#waiting = undefined;
    this.#emit(completed(waiting.cycle, rest, strained, waiting.residualN), waiting.waveform);
  }
}

function completed(cycle: Cycle, rest: Rest | undefined, strained: boolean, residualN: number): Cycle {
  if (strained) {
    return { ...cycle, restAfter: rest, flags: inOrder(new Set([...cycle.flags, "notReleased" as const])) };
  }
  const known: Cycle = { ...cycle, restAfter: rest, zeroAfterN: rest?.indicationN };
  if (rest === undefined || cycle.restBefore === undefined) return known;
  // Force only adds: a rest that lies lower than the one before shows that one to have been strained.
  if (cycle.restBefore.indicationN - rest.indicationN <= residualN) return known;
  return { ...withZero(known, rest), zeroBeforeN: undefined };
}
