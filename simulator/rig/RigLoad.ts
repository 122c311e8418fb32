type Step = { readonly atS: number; readonly fromN: number; readonly toN: number; readonly rampS: number };

/** How far a load set by hand still settles after its ramp, and how fast (common practice, no source). */
const SETTLES = 2e-4;
const MEMORY_S = 1.5;

/** The load of a proving rig: brought to a force by a ramp, standing there but for a little settling. Felt by gauge and reference alike. */
export class RigLoad {
  #step: Step = { atS: 0, fromN: 0, toN: 0, rampS: 0 };

  /** Moves from where it stands to `toN` in `rampS`. */
  set(atS: number, toN: number, rampS: number): void {
    this.#step = { atS, fromN: this.forceN(atS), toN, rampS };
  }

  forceN(tS: number): number {
    const { atS, fromN, toN, rampS } = this.#step;
    const passed = tS - atS;
    if (passed < 0) return fromN;
    if (passed < rampS) return fromN + ((toN - fromN) * passed) / rampS;
    return toN * (1 - SETTLES * (1 - Math.exp(-(passed - rampS) / MEMORY_S)));
  }
}
