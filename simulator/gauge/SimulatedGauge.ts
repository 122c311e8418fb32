import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { type ClampingUnit, creepOf, meanForceN, scatterOf, soundUnit } from "../physics/clampingUnit.ts";
import { type ClampingTruth, Load } from "../physics/Load.ts";
import { Noise } from "../physics/Noise.ts";
import { Random } from "../physics/Random.ts";
import { Corruption } from "./Corruption.ts";
import { checkGaugeOptions, type GaugeOptions } from "./GaugeOptions.ts";
import { decimalsFor, type LineFormat, lineFormats } from "./lineFormats.ts";

const WEDGE_RATIO = 3; // a hollow taper's gripper (common practice, no source)
const DISCS = 120;

/**
 * A gauge in a spindle: load, signal chain, lines. Time passes by `advance` only, one reading after the other, so
 * the same seed and the same commands give the same bytes, however fast they are asked for.
 */
export class SimulatedGauge {
  readonly options: GaugeOptions;
  /** Readings so far, sent or not. */
  count = 0;
  unit: ForceUnit;
  /** The mechanism that clamps; faults replace it. */
  mechanism: ClampingUnit;
  readonly load = new Load();
  readonly corruption: Corruption;
  zeroN: number;
  driftNPerHour: number;
  /** Share of the force that stays at the next release. */
  residual = 0;
  #silentUntil = 0; // reading number
  #spikeN = 0; // added to the next reading only
  #heldN = 0;
  #restSinceS: number | undefined;
  #previousN = 0;
  readonly #format: LineFormat;
  readonly #decimals: number | undefined;
  readonly #noise: Noise;
  readonly #random: Random;

  constructor(options: GaugeOptions) {
    checkGaugeOptions(options);
    this.options = options;
    this.unit = options.unit;
    this.mechanism = soundUnit(options.forceN, WEDGE_RATIO, DISCS);
    this.zeroN = options.zeroN ?? 0;
    this.driftNPerHour = options.driftNPerHour ?? 0;
    this.#format = lineFormats[options.format];
    this.#decimals = options.decimals;
    this.#random = new Random(options.seed);
    this.corruption = new Corruption(this.#random.branch());
    const sdN = options.noiseN ?? options.capacityN / 5_000;
    this.#noise = new Noise(
      { whiteN: sdN * Math.SQRT1_2, wanderN: sdN * Math.SQRT1_2, memoryS: 0.1 },
      1 / options.rateHz,
      this.#random.branch(),
    );
  }

  /** Seconds since it was switched on, by its own clock. */
  get tS(): number {
    return this.count / this.options.rateHz;
  }

  /** What it shows now, and the greatest since it was last at rest, newtons. */
  get shownN(): number {
    return this.#previousN;
  }

  get heldN(): number {
    return this.#heldN;
  }

  get truth(): readonly ClampingTruth[] {
    return this.load.truth;
  }

  /** Clamps with what the mechanism gives, or with `forceN`; answers false when it is clamped already. */
  clamp(forceN?: number): boolean {
    if (this.load.clamped) return false;
    const settledN = forceN ?? meanForceN(this.mechanism) * (1 + scatterOf(this.mechanism) * this.#random.normal());
    this.load.clamp(this.tS, {
      settledN,
      drawnShare: 0.15,
      drawS: 0.12,
      overshoot: this.options.overshoot ?? 0.025,
      ringHz: this.options.ringHz ?? 5,
      creep: creepOf(this.mechanism),
    });
    return true;
  }

  /** Answers false when nothing is clamped. */
  release(): boolean {
    if (!this.load.clamped) return false;
    this.load.release(this.tS, 0.15, this.residual);
    return true;
  }

  spike(heightN: number): void {
    this.#spikeN = heightN;
  }

  /** Sends nothing for so long; time goes on. */
  beSilent(seconds: number): void {
    this.#silentUntil = this.count + Math.round(seconds * this.options.rateHz);
  }

  /** The next `n` readings as the bytes it sends. */
  advance(n: number): Uint8Array {
    let text = "";
    for (let i = 0; i < n; i += 1) text += this.#next();
    return Buffer.from(text, "latin1");
  }

  #next(): string {
    const tS = this.tS;
    const loadN = this.load.forceN(tS);
    const driftN = (this.driftNPerHour * tS) / 3600;
    const shownN = loadN * (this.options.gain ?? 1) + this.zeroN + driftN + this.#noise.next() + this.#spikeN;
    this.#spikeN = 0;
    this.#hold(shownN, loadN, tS);
    const { capacityN } = this.options;
    const decimals = this.#decimals ?? decimalsFor(capacityN, this.unit);
    const overload = Math.abs(shownN) > capacityN;
    const moving = Math.abs(shownN - this.#previousN) > capacityN / 500;
    const sample = { forceN: shownN, heldN: this.#heldN, overload, moving, count: this.count, tMs: tS * 1_000 };
    this.#previousN = shownN;
    this.count += 1;
    if (this.count <= this.#silentUntil) return "";
    return this.corruption.spoil(this.#format(sample, this.unit, decimals));
  }

  /** The greatest reading stands until the gauge has been at rest for a second. */
  #hold(shownN: number, loadN: number, tS: number): void {
    if (loadN > this.options.capacityN / 100) this.#restSinceS = undefined;
    else this.#restSinceS ??= tS;
    const cleared = this.#restSinceS !== undefined && tS - this.#restSinceS > 1;
    this.#heldN = cleared ? shownN : Math.max(this.#heldN, shownN);
  }
}
