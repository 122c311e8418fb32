import {
  type RoundSlips,
  type RoundTruth,
  simulateRound,
  usualSlips,
} from "../../../simulator/memory/simulateRound.ts";
import { Random } from "../../../simulator/physics/Random.ts";

/** A works drawn at random and a day's round in it, as the simulator walks it. */
export type DrawnRound = {
  readonly spindles: readonly { readonly forceN: number; readonly historyN: readonly number[] }[];
  /** Relative standard deviation from check to check, the same for all of the works. */
  readonly scatter: number;
  readonly truth: RoundTruth;
  /** Position of the spindle each reading is of. */
  readonly owners: readonly number[];
  /** Location each reading was stored under, from 1. */
  readonly locations: readonly number[];
};

export type Habits = {
  readonly slips: RoundSlips;
  /** Share of spindles whose force has fallen since the last check, by 5 to 25 %. */
  readonly fallen: number;
  /** Share of neighbouring visits whose locations were keyed the wrong way round. */
  readonly keyedWrong: number;
};

export const usualHabits: Habits = { slips: usualSlips, fallen: 0, keyedWrong: 0 };

const START_MS = Date.parse("2026-03-02T06:30:00Z");
const YEAR_S = 365 * 86_400;

/** 2 to 60 spindles of 5 to 80 kN with 3 to 12 earlier checks, scattering by 0.4 to 1.5 %; a clock off by up to a year. */
export function drawWorks(seed: number, habits: Habits): DrawnRound {
  const random = new Random(seed);
  const scatter = random.between(0.004, 0.015);
  const takeScatter = 0.4 * scatter;
  const spindles = Array.from({ length: 2 + random.below(59) }, () => {
    const forceN = 5_000 * Math.exp(random.uniform() * Math.log(16));
    const historyN = Array.from({ length: 3 + random.below(10) }, () => forceN * Math.exp(scatter * random.normal()));
    return { forceN, historyN };
  });
  const truth = simulateRound({
    seed: random.below(2 ** 31),
    places: spindles.map(({ forceN }, i) => ({
      spindleId: String(i),
      forceN: random.uniform() < habits.fallen ? forceN * random.between(0.75, 0.95) : forceN,
      location: i + 1,
    })),
    startMs: START_MS,
    unit: "N",
    slips: habits.slips,
    visitScatter: Math.sqrt(scatter ** 2 - takeScatter ** 2 / 4), // with about four takes a visit: the scatter of the checks
    takeScatter,
    clockOffsetS: random.between(-YEAR_S, YEAR_S),
    driftSPerDay: random.between(-5, 5),
    memory: 10_000,
  });
  const owners = truth.owners.map(Number);
  return { spindles, scatter, truth, owners, locations: keyed(owners, habits.keyedWrong, random) };
}

/** The location of each reading; of some neighbouring visits they were set the wrong way round. */
function keyed(owners: readonly number[], share: number, random: Random): number[] {
  const visits = owners.filter((owner, i) => owner !== owners[i - 1]);
  const said = [...visits];
  for (let i = 1; i < said.length; i += 1) {
    if (random.uniform() < share / 2) [said[i - 1], said[i]] = [said[i]!, said[i - 1]!];
  }
  let visit = -1;
  return owners.map((owner, i) => {
    if (owner !== owners[i - 1]) visit += 1;
    return said[visit]! + 1;
  });
}
