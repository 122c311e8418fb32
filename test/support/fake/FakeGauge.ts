import type { ReadingsBatch } from "../../../app/contract/events.ts";
import type { CycleView, LiveView } from "../../../app/contract/seriesViews.ts";

export const FAKE_RATE_HZ = 100;

/**
 * A gauge that is clamped and released on command. It is no physics: a snap with a ring, a hold, a release, so that the
 * screens have something to draw. Time moves only when it is told to.
 */
export class FakeGauge {
  forceN = 17_950;
  #t = 0;
  #clampedAt: number | undefined;
  #releasedAt: number | undefined;
  #greatest = 0;
  #noise = 1;
  readonly #closed: (cycle: Omit<CycleView, "cycleId" | "number">) => void;

  constructor(closed: (cycle: Omit<CycleView, "cycleId" | "number">) => void) {
    this.#closed = closed;
  }

  clamp(forceN?: number): void {
    if (forceN !== undefined) this.forceN = forceN;
    this.#clampedAt = this.#t;
    this.#releasedAt = undefined;
    this.#greatest = 0;
  }

  release(): void {
    if (this.#clampedAt === undefined) return;
    const startS = this.#clampedAt;
    const held = this.#t - startS;
    this.#clampedAt = undefined;
    this.#releasedAt = this.#t;
    if (held < 0.3) return;
    this.#closed({
      startS,
      endS: this.#t,
      peakN: this.#greatest,
      settledN: this.forceN + this.#random() * 20,
      settledUncertaintyN: 8,
      windowS: [startS + Math.min(1, held * 0.5), Math.min(startS + 3, this.#t)],
      overshoot: this.#greatest / this.forceN - 1,
      riseTimeS: 0.04,
      noiseN: 18,
      creep: 0.0004,
      slopeNPerS: -1,
      zeroBeforeN: 12,
      zeroAfterN: 14,
      flags: held < 1.1 ? ["short"] : [],
      dropped: undefined,
    });
  }

  /** The readings of the next stretch of time. */
  run(seconds: number): ReadingsBatch {
    const t: number[] = [];
    const forceN: number[] = [];
    const n = Math.round(seconds * FAKE_RATE_HZ);
    for (let i = 0; i < n; i += 1) {
      this.#t += 1 / FAKE_RATE_HZ;
      t.push(this.#t);
      forceN.push(Math.round(this.#now() / 10) * 10);
      this.#greatest = Math.max(this.#greatest, forceN.at(-1)!);
    }
    return { t, forceN, timed: true, live: this.#live(forceN.at(-1) ?? 0) };
  }

  #live(forceN: number): LiveView {
    const since = this.#clampedAt === undefined ? undefined : this.#t - this.#clampedAt;
    const word = since === undefined ? (forceN > 500 ? "falling" : "atRest") : since < 0.4 ? "rising" : "holding";
    return {
      forceN,
      word,
      greatestN: this.#greatest,
      zeroN: 12,
      holdingS: word === "holding" ? since! - 0.4 : undefined,
    };
  }

  #now(): number {
    const noise = this.#random() * 22;
    if (this.#clampedAt !== undefined) {
      const s = this.#t - this.#clampedAt;
      return this.forceN * (1 - Math.exp(-s / 0.03) * Math.cos(s * 38)) + noise;
    }
    const s = this.#t - (this.#releasedAt ?? Number.NEGATIVE_INFINITY);
    return this.forceN * Math.exp(-s / 0.15) * (s < 2 ? 1 : 0) + noise;
  }

  #random(): number {
    this.#noise = (Math.imul(this.#noise, 1_664_525) + 1_013_904_223) >>> 0;
    return (this.#noise / 2 ** 32 - 0.5) * 2;
  }
}
