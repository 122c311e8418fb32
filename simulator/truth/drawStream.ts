import { Random } from "../physics/Random.ts";
import { arrivalOf, type Clamping, drawHand, drawSnap, drawSteps, type Rise } from "./clamping.ts";
import { type Condition, usualNoise } from "./conditions.ts";

/** A stream as drawn: what happens when, before a gauge has looked at it. */
export type Plan = {
  readonly condition: Condition;
  readonly seed: number;
  readonly rateHz: number;
  readonly capacityN: number;
  readonly tellCapacity: boolean;
  readonly noiseN: number;
  readonly memory: number;
  readonly stepN: number;
  readonly offsetN: number;
  readonly driftNPerS: number;
  /** Each with the time it starts. */
  readonly clampings: readonly { readonly atS: number; readonly clamping: Clamping }[];
  readonly knocks: readonly { readonly atS: number; readonly spanS: number; readonly heightN: number }[];
  /** From here to here the stream is seen. */
  readonly fromS: number;
  readonly toS: number;
};

const pick = (random: Random, [low, high]: readonly [number, number]) => random.between(low, high);
const pickLog = (random: Random, [low, high]: readonly [number, number]) =>
  Math.exp(random.between(Math.log(low), Math.log(high)));

/** Draws what a stream of this condition shows. The same seed gives the same plan. */
export function drawStream(condition: Condition, seed: number): Plan {
  const random = new Random(seed);
  const rateHz = pickLog(random, condition.rateHz ?? [8, 2000]);
  const capacityN = [10_000, 20_000, 25_000, 30_000, 50_000, 100_000][random.below(6)]!;
  const noiseN = capacityN * pickLog(random, condition.noise ?? usualNoise);
  const clampings: { atS: number; clamping: Clamping }[] = [];
  const knocks: { atS: number; spanS: number; heightN: number }[] = [];
  const count = Math.round(pick(random, condition.cycles ?? [5, 12]));
  let at = Math.max(10 / rateHz, random.between(2, 6));
  let fromN = 0;
  for (let i = 0; i < count; i += 1) {
    const clamping = drawClamping(condition, random, rateHz, capacityN, fromN, i === count - 1);
    clampings.push({ atS: at, clamping });
    const fall = clamping.release.kind === "exponential" ? 8 * clamping.release.spanS : clamping.release.spanS;
    at += arrivalOf(clamping.rise) + clamping.holdS + fall;
    fromN = clamping.release.toN;
    const rest = restAfter(condition, random, rateHz, fromN > 0);
    if (condition.knocks && fromN === 0) drawKnocks(random, at, rest, capacityN, knocks);
    at += rest;
  }
  const first = clampings[0]!;
  const last = clampings.at(-1)!;
  const inHold = ({ atS, clamping }: { atS: number; clamping: Clamping }) =>
    atS + arrivalOf(clamping.rise) + clamping.holdS * random.between(0.4, 0.6);
  return {
    condition,
    seed,
    rateHz,
    capacityN,
    tellCapacity: condition.tellCapacity ?? random.uniform() < 0.5,
    noiseN,
    memory: condition.memory ?? [0, 0, 0.3, 0.5][random.below(4)]!,
    // No gauge shows fewer than two hundred steps.
    stepN: Math.min(capacityN / 200, noiseN * pickLog(random, condition.coarseSteps ?? [0.01, 1])),
    offsetN: capacityN * random.between(-1, 1) * (condition.offset ?? 0.005),
    driftNPerS: (capacityN * random.between(-1, 1) * (condition.driftPerMinute ?? 0)) / 60,
    clampings,
    knocks,
    fromS: condition.begins === "inHold" ? inHold(first) : 0,
    toS: condition.ends === "inHold" ? inHold(last) : at + Math.max(1.5, 8 / rateHz),
  };
}

function drawClamping(
  condition: Condition,
  random: Random,
  rateHz: number,
  capacityN: number,
  fromN: number,
  last: boolean,
): Clamping {
  const levelN = capacityN * pick(random, condition.share ?? [0.05, 1]);
  const least = 9 / rateHz;
  const cutShort = condition.begins !== undefined || condition.ends !== undefined;
  const holdS = least + pickLog(random, cutShort ? [3, 12] : (condition.holdS ?? [0.5, 8]));
  const kind = condition.rise ?? (["snap", "snap", "snap", "hand", "steps"] as const)[random.below(5)]!;
  const rise: Rise = kind === "snap" ? drawSnap(random, holdS) : kind === "hand" ? drawHand(random) : drawSteps(random);
  const by = random.uniform();
  const leaves = (condition.backToBack && !last) || (condition.residual && random.uniform() < 0.5 && !last);
  return {
    levelN: Math.min(Math.max(levelN, 3 * fromN), capacityN),
    rise,
    holdS,
    creep: random.between(-0.008, 0.008),
    slip: condition.slip && random.uniform() < 0.6 ? drawSlip(random, holdS, rateHz) : undefined,
    release:
      by < 0.5
        ? { kind: "exponential", spanS: random.between(0.005, 0.06), toN: 0 }
        : { kind: "ramp", spanS: random.between(0.01, 0.4), toN: 0 },
    fromN,
    ...(leaves
      ? {
          release: {
            kind: "exponential",
            spanS: random.between(0.01, 0.05),
            toN: Math.min(levelN, capacityN / 3) * random.between(0.05, 0.4),
          },
        }
      : {}),
  };
}

function drawSlip(random: Random, holdS: number, rateHz: number) {
  const margin = Math.max(0.5, 5 / rateHz);
  const share = random.between(0.02, 0.3) * (random.uniform() < 0.8 ? -1 : 0.25);
  return {
    atS: random.between(margin, holdS - margin),
    share: Math.abs(share) < 0.02 ? 0.02 * Math.sign(share) : share,
    lastsS: random.between(0.001, 0.05),
  };
}

function restAfter(condition: Condition, random: Random, rateHz: number, strained: boolean): number {
  if (condition.backToBack && strained) return Math.max(3 / rateHz, random.between(0.15, 1.5));
  return Math.max(10 / rateHz, random.between(1, 6));
}

/** Handling: up to 3 % of the capacity for up to a quarter of a second, some pulling instead of pressing. */
function drawKnocks(
  random: Random,
  at: number,
  rest: number,
  capacityN: number,
  into: Plan["knocks"] extends readonly (infer K)[] ? K[] : never,
): void {
  for (let t = at + 0.2; t < at + rest - 0.6; t += random.between(0.4, 1)) {
    const heightN = capacityN * random.between(0.005, 0.03) * (random.uniform() < 0.8 ? 1 : -1);
    into.push({ atS: t, spanS: random.between(0.02, 0.25), heightN });
  }
}
