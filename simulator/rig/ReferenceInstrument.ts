import { type ForceUnit, forceUnits } from "../../app/quantity/forceUnits.ts";
import { decimalsFor, lineFormats } from "../gauge/lineFormats.ts";
import type { Random } from "../physics/Random.ts";

export type ReferenceOptions = {
  readonly rateHz: number;
  /** Each line leaves up to so many seconds late. */
  readonly jitterS: number;
  readonly unit: ForceUnit;
  readonly capacityN: number;
  /** Standard deviation of its noise, newtons. */
  readonly noiseN: number;
  readonly zeroN: number;
  readonly decimals?: number | undefined;
};

/** Ten readings a second in newtons, each up to 50 ms late: another rate and unit than the gauge, as it mostly is. */
export const usualReference: Omit<ReferenceOptions, "capacityN" | "noiseN"> = {
  rateHz: 10,
  jitterS: 0.05,
  unit: "N",
  zeroN: 12,
};

/** @throws RangeError  with what it may be */
function check({ rateHz, jitterS, unit, capacityN }: ReferenceOptions): void {
  if (!(rateHz > 0 && rateHz <= 10_000))
    throw new RangeError(`reference-rate must be above 0 and at most 10000 a second, got ${rateHz}`);
  if (!(jitterS >= 0 && jitterS <= 5)) throw new RangeError(`reference-jitter lies between 0 and 5 s, got ${jitterS}`);
  if (!forceUnits.includes(unit)) throw new RangeError(`reference-unit must be one of ${forceUnits.join(", ")}`);
  if (!(capacityN > 0)) throw new RangeError("the reference's capacity must be above 0");
}

/** The better instrument in the same load train: true but for its noise, at a rate of its own, its lines a little late. */
export class ReferenceInstrument {
  readonly #options: ReferenceOptions;
  readonly #loadN: (tS: number) => number;
  readonly #random: Random;
  #count = 0;
  #waiting: { readonly dueS: number; readonly line: string }[] = [];

  /** @param loadN  what presses on it, newtons, at a time that never goes back by much */
  constructor(options: ReferenceOptions, loadN: (tS: number) => number, random: Random) {
    check(options);
    this.#options = options;
    this.#loadN = loadN;
    this.#random = random;
  }

  /** The bytes that have left it by `tS`, by the gauge's clock. */
  until(tS: number): Uint8Array {
    const { rateHz, jitterS } = this.#options;
    while (this.#count / rateHz <= tS) {
      const atS = this.#count / rateHz;
      const dueS = atS + jitterS * this.#random.uniform();
      this.#waiting.push({ dueS: Math.max(dueS, this.#waiting.at(-1)?.dueS ?? 0), line: this.#line(atS) });
      this.#count += 1;
    }
    const sent = this.#waiting.filter((w) => w.dueS <= tS);
    this.#waiting = this.#waiting.slice(sent.length);
    return Buffer.from(sent.map((w) => w.line).join(""), "latin1");
  }

  #line(atS: number): string {
    const { capacityN, unit, noiseN, zeroN, decimals = decimalsFor(capacityN / 30, unit) } = this.#options;
    const forceN = this.#loadN(atS) + zeroN + noiseN * this.#random.normal();
    const overload = Math.abs(forceN) > 1.2 * capacityN;
    const sample = { forceN, heldN: forceN, overload, moving: false, count: this.#count, tMs: atS * 1_000 };
    return lineFormats.numberUnit(sample, unit, decimals);
  }
}
