import { decimalsFor } from "../gauge/lineFormats.ts";
import type { SimulatedGauge } from "../gauge/SimulatedGauge.ts";
import { Random } from "../physics/Random.ts";
import { clockLine, type DumpFormatName, dumpFormats } from "./dumpFormats.ts";
import { GaugeClock } from "./GaugeClock.ts";
import { GaugeMemory } from "./GaugeMemory.ts";

export type MemoryOptions = {
  readonly capacity: number;
  readonly format: DumpFormatName;
  /** Local time when the gauge was switched on, milliseconds since 1970 without a zone. */
  readonly startMs: number;
  readonly clockOffsetS: number;
  readonly driftSPerDay: number;
};

/** The memory, clock and dump of a simulated gauge: what it answers when it is docked. */
export class MemoryGauge {
  readonly memory: GaugeMemory;
  readonly clock: GaugeClock;
  /** Chance of each line of a dump to be lost on the way. */
  lossPerLine = 0;
  /** The location number that is set, where the user sets one. */
  location: number | undefined;
  readonly #gauge: SimulatedGauge;
  readonly #options: MemoryOptions;
  readonly #random: Random;

  constructor(gauge: SimulatedGauge, options: MemoryOptions) {
    this.#gauge = gauge;
    this.#options = options;
    this.memory = new GaugeMemory(options.capacity);
    this.clock = new GaugeClock(options.clockOffsetS, options.driftSPerDay, options.startMs);
    this.#random = new Random(gauge.options.seed + 104_729);
  }

  /** True local time now. */
  get nowMs(): number {
    return this.#options.startMs + this.#gauge.tS * 1_000;
  }

  /** The user presses the store key. Answers false when the memory is full. */
  store(held: boolean): boolean {
    const { unit, shownN, heldN } = this.#gauge;
    return this.memory.store({
      forceN: held ? heldN : shownN,
      unit,
      clockMs: this.clock.shows(this.nowMs),
      location: this.location,
      held,
    });
  }

  /** The battery is changed. */
  resetClock(): void {
    this.clock.reset(this.nowMs);
  }

  /** The whole memory as it arrives: lines may be lost. */
  dump(): Uint8Array {
    const decimals = decimalsFor(this.#gauge.options.capacityN, this.#gauge.unit);
    const lines = dumpFormats[this.#options.format](this.memory.readings, decimals);
    return Buffer.from(lines.filter(() => this.#random.uniform() >= this.lossPerLine).join(""), "latin1");
  }

  /** Answers what the PC asks: `DUMP`, `COUNT` or `TIME`, each ended by CR; undefined for anything else. */
  answer(request: string): Uint8Array | undefined {
    if (request === "DUMP") return this.dump();
    if (request === "COUNT") return Buffer.from(`COUNT ${this.memory.readings.length}\r\n`);
    if (request === "TIME") return Buffer.from(clockLine(this.clock.shows(this.nowMs)));
    return undefined;
  }
}
