import type { ForceUnit } from "../../app/quantity/forceUnits.ts";

/** One reading the user has stored, as the gauge keeps it. */
export type StoredReading = {
  /** From 1, in the order they were stored. */
  readonly number: number;
  readonly forceN: number;
  readonly unit: ForceUnit;
  /** What the gauge's clock showed, as milliseconds since 1970 without a zone. */
  readonly clockMs: number;
  /** The location the user had set, where the gauge has that. */
  readonly location: number | undefined;
  /** The greatest reading instead of the present one. */
  readonly held: boolean;
};

/** A gauge's memory: it takes so many readings and then no more until it is cleared. */
export class GaugeMemory {
  readonly capacity: number;
  #readings: StoredReading[] = [];

  constructor(capacity: number) {
    if (!(Number.isInteger(capacity) && capacity > 0))
      throw new RangeError(`a memory takes at least one reading, got ${capacity}`);
    this.capacity = capacity;
  }

  get readings(): readonly StoredReading[] {
    return this.#readings;
  }

  get full(): boolean {
    return this.#readings.length >= this.capacity;
  }

  /** Answers false when it is full: the reading is not kept. */
  store(reading: Omit<StoredReading, "number">): boolean {
    if (this.full) return false;
    this.#readings.push({ ...reading, number: this.#readings.length + 1 });
    return true;
  }

  /** Some gauges renumber what is left when an old reading is taken out. */
  removeFirst(count: number): void {
    this.#readings = this.#readings.slice(count).map((reading, i) => ({ ...reading, number: i + 1 }));
  }

  clear(): void {
    this.#readings = [];
  }
}
