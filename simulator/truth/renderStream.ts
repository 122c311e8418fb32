import type { ReadingState } from "../../app/gauge/ReadingSink.ts";
import { Random } from "../physics/Random.ts";
import { forceAt } from "./clamping.ts";
import type { Plan } from "./drawStream.ts";
import type { TruthStream } from "./TruthStream.ts";
import { resetTime, truthOf } from "./truthOf.ts";

type State = ReadingState | "rejected";

/** Lets a gauge look at a plan: noise, steps, spikes, lost lines, overload; and says what is true of it. */
export function renderStream(plan: Plan): TruthStream {
  const random = new Random(plan.seed ^ 0x5bd1e995);
  const n = Math.max(1, Math.floor((plan.toS - plan.fromS) * plan.rateHz));
  const clean = cleanForces(plan, n);
  const forcesN = new Float64Array(n);
  let remembered = plan.noiseN * random.normal();
  for (let i = 0; i < n; i += 1) {
    const zero = plan.offsetN + (plan.driftNPerS * i) / plan.rateHz;
    forcesN[i] = stepped(clean[i]! + zero + remembered, plan.stepN);
    remembered = plan.memory * remembered + Math.sqrt(1 - plan.memory ** 2) * plan.noiseN * random.normal();
  }
  const spiked = plan.condition.spikes ? addSpikes(plan, forcesN, random) : [];
  const states = statesOf(plan, clean, forcesN, random);
  return {
    condition: plan.condition.name,
    seed: plan.seed,
    rateHz: plan.rateHz,
    capacityN: plan.capacityN,
    tellCapacity: plan.tellCapacity,
    stepN: plan.stepN,
    noiseN: plan.noiseN,
    memory: plan.memory,
    forcesN,
    states,
    cycles: truthOf(plan, clean, spiked, forcesN, states),
  };
}

const stepped = (value: number, step: number) => (step > 0 ? Math.round(value / step) * step : value);

/** Net force without noise at each reading. */
function cleanForces(plan: Plan, n: number): Float64Array {
  const clean = new Float64Array(n);
  plan.clampings.forEach(({ atS, clamping }, k) => {
    const next = plan.clampings[k + 1]?.atS ?? plan.toS;
    const from = Math.max(0, Math.ceil((atS - plan.fromS) * plan.rateHz));
    const to = Math.min(n, Math.ceil((next - plan.fromS) * plan.rateHz));
    for (let i = from; i < to; i += 1) clean[i] = forceAt(clamping, plan.fromS + i / plan.rateHz - atS);
  });
  for (const knock of plan.knocks) {
    const from = Math.max(0, Math.ceil((knock.atS - plan.fromS) * plan.rateHz));
    for (let i = from; i < n; i += 1) {
      const share = (plan.fromS + i / plan.rateHz - knock.atS) / knock.spanS;
      if (share > 1) break;
      clean[i]! += knock.heightN * Math.sin(Math.PI * share);
    }
  }
  return clean;
}

/** Single readings off by 1 % to 200 % of the capacity, never two within five. */
function addSpikes(plan: Plan, forcesN: Float64Array, random: Random): number[] {
  const at: number[] = [];
  const every = Math.max(6, Math.round(plan.rateHz * random.between(1, 4)));
  for (let i = random.below(every) + 3; i < forcesN.length - 3; i += 6 + random.below(2 * every)) {
    const size = Math.max(plan.capacityN * 10 ** random.between(-2, 0.3), 12 * plan.noiseN, 4 * plan.stepN);
    forcesN[i] = stepped(forcesN[i]! + size * (random.uniform() < 0.6 ? 1 : -1), plan.stepN);
    at.push(i);
  }
  return at;
}

function statesOf(plan: Plan, clean: Float64Array, forcesN: Float64Array, random: Random): State[] | undefined {
  const { condition, capacityN } = plan;
  if (condition.held) return holdMaximum(plan, clean, forcesN);
  if (condition.clipped) {
    for (let i = 0; i < forcesN.length; i += 1) forcesN[i] = Math.min(forcesN[i]!, capacityN);
  }
  if (condition.overload) {
    const limit = 0.8 * capacityN;
    return Array.from(forcesN, (f) => (f > limit ? "overload" : "live"));
  }
  if (condition.lost === undefined) return undefined;
  const share = condition.lost;
  return Array.from(forcesN, () => (random.uniform() < share ? "rejected" : "live"));
}

function greatestBetween(plan: Plan, i: number): number {
  const at = plan.fromS + i / plan.rateHz;
  const k = plan.clampings.findLastIndex(({ atS }) => atS <= at);
  if (k < 0) return 0;
  const { atS, clamping } = plan.clampings[k]!;
  let top = 0;
  for (let s = 0; s < 200; s += 1) top = Math.max(top, forceAt(clamping, at - atS - s / (200 * plan.rateHz)));
  return top;
}

/** The greatest so far, reset half-way through each rest. */
function holdMaximum(plan: Plan, clean: Float64Array, forcesN: Float64Array): State[] {
  const resets = new Set(
    plan.clampings.map(({ atS }, k) => {
      const next = plan.clampings[k + 1]?.atS ?? plan.toS;
      return Math.round((resetTime(atS, next) - plan.fromS) * plan.rateHz);
    }),
  );
  let held = Number.NEGATIVE_INFINITY;
  for (let i = 0; i < forcesN.length; i += 1) {
    if (resets.has(i)) held = Number.NEGATIVE_INFINITY;
    // The gauge looks much oftener than it sends.
    const missed = greatestBetween(plan, i) - clean[i]!;
    held = Math.max(held, forcesN[i]! + stepped(Math.max(0, missed), plan.stepN));
    forcesN[i] = held;
  }
  return Array.from(forcesN, () => "held");
}
