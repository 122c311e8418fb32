import { Random } from "../physics/Random.ts";

/** How rounds go: shares of visits. */
export type RoundHabits = {
  readonly missing: number;
  readonly repeated: number;
  readonly swapped: number;
  /** Share of neighbouring visits whose location numbers were keyed the wrong way round. */
  readonly locationsSwapped: number;
  /** Share of spindles whose force has fallen since the last check, by 5 to 25 %. */
  readonly fallen: number;
  readonly clockOffS: number;
};

export const usualHabits: RoundHabits = {
  missing: 0.05,
  repeated: 0.05,
  swapped: 0.02,
  locationsSwapped: 0,
  fallen: 0,
  clockOffS: 365 * 86_400,
};

export type DrawnSpindle = { readonly forceN: number; readonly scatter: number; readonly historyN: readonly number[] };
export type DrawnTake = {
  readonly spindle: number;
  readonly valueN: number;
  readonly atMs: number;
  readonly location: number;
};
export type DrawnRound = {
  readonly spindles: readonly DrawnSpindle[];
  readonly takes: readonly DrawnTake[];
  readonly startMs: number;
  readonly endMs: number;
  /** Gauge minus PC. */
  readonly clockOffMs: number;
};

const START_MS = Date.parse("2026-03-02T06:30:00Z");

/**
 * A round as it may go: 2 to 60 spindles with histories, one to four takes each, some left out, some measured again at once or
 * one machine later, some neighbours visited the other way round. Time is the PC's; the gauge's is `clockOffMs` ahead.
 */
export function drawRound(seed: number, habits: RoundHabits = usualHabits): DrawnRound {
  const random = new Random(seed);
  const count = 2 + random.below(59);
  const spindles = Array.from({ length: count }, () => drawSpindle(random));
  const fallen = spindles.map(() => (random.uniform() < habits.fallen ? random.between(0.75, 0.95) : 1));
  const walk = [...spindles.keys()].filter(() => random.uniform() >= habits.missing);
  for (let i = 1; i < walk.length; i += 1) {
    // Each swap puts two visits out of turn, so half the share of them begins one.
    if (random.uniform() < habits.swapped / 2) [walk[i - 1], walk[i]] = [walk[i]!, walk[i - 1]!];
  }
  const visits = walk.flatMap((spindle, i) => {
    if (random.uniform() >= habits.repeated) return [{ spindle, i }];
    return random.uniform() < 0.5
      ? [
          { spindle, i },
          { spindle, i },
        ]
      : [
          { spindle, i },
          { spindle, i: i + 1.5 },
        ];
  });
  visits.sort((a, b) => a.i - b.i);
  const each = 1 + random.below(4);
  const keyed = visits.map((v) => v.spindle);
  for (let i = 1; i < keyed.length; i += 1) {
    if (random.uniform() < habits.locationsSwapped / 2) [keyed[i - 1], keyed[i]] = [keyed[i]!, keyed[i - 1]!];
  }
  const takes: DrawnTake[] = [];
  let atMs = START_MS;
  for (const [v, { spindle }] of visits.entries()) {
    const { forceN, scatter } = spindles[spindle]!;
    if (v > 0 && visits[v - 1]!.spindle === spindle) atMs += 20_000;
    else atMs += random.between(150_000, 600_000);
    const dayN = forceN * fallen[spindle]! * Math.exp(0.7 * scatter * random.normal());
    for (let k = 0; k < each; k += 1) {
      const valueN = Math.round((dayN * Math.exp(0.7 * scatter * random.normal())) / 10) * 10;
      takes.push({ spindle, valueN, atMs: Math.round(atMs / 1000) * 1000, location: keyed[v]! + 1 });
      atMs += random.between(12_000, 45_000);
    }
  }
  const clockOffMs = Math.round(habits.clockOffS * random.between(-1, 1)) * 1000;
  return { spindles, takes, startMs: START_MS, endMs: atMs + 600_000, clockOffMs };
}

/** Forces from 5 to 80 kN; from check to check they scatter by 0.4 to 1.5 %. */
function drawSpindle(random: Random): DrawnSpindle {
  const forceN = 5_000 * Math.exp(random.uniform() * Math.log(16));
  const scatter = random.between(0.004, 0.015);
  const checks = 3 + random.below(10);
  const historyN = Array.from({ length: checks }, () => forceN * Math.exp(scatter * random.normal()));
  return { forceN, scatter, historyN };
}
