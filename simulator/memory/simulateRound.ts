import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { Random } from "../physics/Random.ts";
import { GaugeClock } from "./GaugeClock.ts";
import { GaugeMemory, type StoredReading } from "./GaugeMemory.ts";

/** One stop of a round. */
export type RoundPlace = {
  readonly spindleId: string;
  /** What it holds with at present, newtons. */
  readonly forceN: number;
  /** Location number of the gauge, where the user sets one at each machine. */
  readonly location?: number | undefined;
};

/** How often something goes otherwise than planned: chances from 0 to 1, of each place unless it says otherwise. */
export type RoundSlips = {
  /** The machine runs: it is left out. */
  readonly missing: number;
  /** It is measured again after the next one. */
  readonly repeated: number;
  /** It is measured after the next one, against the plan. */
  readonly swapped: number;
  /** One of its readings is stored twice. */
  readonly twice: number;
  /** A reading is stored with nothing clamped. */
  readonly zeroTake: number;
  /** The greatest of the place before was not cleared. */
  readonly notCleared: number;
  /** Of the whole round: the battery is changed on the way and the clock begins anew. */
  readonly clockReset: number;
};

export type RoundOptions = {
  readonly seed: number;
  readonly places: readonly RoundPlace[];
  /** True local time of the first reading, milliseconds since 1970 without a zone. */
  readonly startMs: number;
  readonly unit: ForceUnit;
  readonly slips: RoundSlips;
  /** Relative standard deviation between visits, and between takes of one visit. */
  readonly visitScatter: number;
  readonly takeScatter: number;
  readonly clockOffsetS: number;
  readonly driftSPerDay: number;
  readonly memory: number;
};

export type RoundTruth = {
  readonly readings: readonly StoredReading[];
  /** For each reading, by its number less one: whose it is; undefined for a take with nothing clamped. */
  readonly owners: readonly (string | undefined)[];
  /** True local time of each reading. */
  readonly trueMs: readonly number[];
  readonly visited: readonly string[];
  readonly endMs: number;
  readonly clock: GaugeClock;
};

/** Chances as a usual day brings them (common practice, no source). */
export const usualSlips: RoundSlips = {
  missing: 0.05,
  repeated: 0.05,
  swapped: 0.02,
  twice: 0,
  zeroTake: 0,
  notCleared: 0,
  clockReset: 0,
};

/** A day's walk with one gauge: what its memory then holds, and whose each reading really is. Pure: a seed gives one day. */
export function simulateRound(options: RoundOptions): RoundTruth {
  const random = new Random(options.seed);
  const route = routeOf(options.places, options.slips, random);
  const walk = new Walk(options, random);
  const resetAt = random.uniform() < options.slips.clockReset ? random.below(route.length) : -1;
  for (const [i, place] of route.entries()) {
    if (i === resetAt) walk.changeBattery();
    walk.visit(place);
  }
  return walk.truth(route);
}

function routeOf(places: readonly RoundPlace[], slips: RoundSlips, random: Random): readonly RoundPlace[] {
  const route = places.filter(() => random.uniform() >= slips.missing);
  for (let i = 0; i + 1 < route.length; i += 1) {
    if (random.uniform() >= slips.swapped) continue;
    [route[i], route[i + 1]] = [route[i + 1]!, route[i]!];
    i += 1; // a place is exchanged once
  }
  return route.flatMap((place, i) => (i > 0 && random.uniform() < slips.repeated ? [place, route[i - 1]!] : [place]));
}

class Walk {
  readonly #options: RoundOptions;
  readonly #random: Random;
  readonly #memory: GaugeMemory;
  readonly #clock: GaugeClock;
  readonly #owners: (string | undefined)[] = [];
  readonly #trueMs: number[] = [];
  #nowMs: number;
  #greatestN = 0;

  constructor(options: RoundOptions, random: Random) {
    this.#options = options;
    this.#random = random;
    this.#memory = new GaugeMemory(options.memory);
    this.#clock = new GaugeClock(options.clockOffsetS, options.driftSPerDay, options.startMs);
    this.#nowMs = options.startMs;
  }

  changeBattery(): void {
    this.#clock.reset(this.#nowMs);
  }

  visit(place: RoundPlace): void {
    const { slips, visitScatter, takeScatter } = this.#options;
    const random = this.#random;
    const levelN = place.forceN * (1 + visitScatter * random.normal());
    const stuckN = random.uniform() < slips.notCleared ? this.#greatestN : 0;
    if (random.uniform() < slips.zeroTake) this.#store(undefined, random.normal() * 0.001 * place.forceN, place);
    this.#greatestN = 0;
    const takes = 3 + random.below(3);
    for (let i = 0; i < takes; i += 1) {
      const forceN = Math.max(stuckN, levelN * (1 + takeScatter * random.normal()));
      this.#greatestN = Math.max(this.#greatestN, forceN);
      this.#store(place.spindleId, forceN, place);
      if (random.uniform() < slips.twice / takes) this.#store(place.spindleId, forceN, place, 2);
      this.#nowMs += random.between(20, 45) * 1_000;
    }
    this.#nowMs += random.between(3, 9) * 60_000; // on to the next machine
  }

  truth(route: readonly RoundPlace[]): RoundTruth {
    const { readings } = this.#memory;
    return {
      readings,
      owners: this.#owners,
      trueMs: this.#trueMs,
      visited: [...new Set(route.map((place) => place.spindleId))],
      endMs: this.#nowMs,
      clock: this.#clock,
    };
  }

  #store(owner: string | undefined, forceN: number, place: RoundPlace, afterS = 0): void {
    this.#nowMs += afterS * 1_000;
    const { unit } = this.#options;
    const kept = this.#memory.store({
      forceN,
      unit,
      clockMs: this.#clock.shows(this.#nowMs),
      location: place.location,
      held: false,
    });
    if (!kept) return;
    this.#owners.push(owner);
    this.#trueMs.push(this.#nowMs);
  }
}
