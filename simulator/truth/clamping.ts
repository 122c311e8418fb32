import type { Random } from "../physics/Random.ts";

/** A clamping as a function of time, and what can be said of it exactly. Times from its start, seconds. */
export type Clamping = {
  /** Force the hold stands at, before creep and slips. */
  readonly levelN: number;
  readonly rise: Rise;
  /** From arrival to the beginning of the release. */
  readonly holdS: number;
  /** Change a decade of time after the arrival, as a fraction. */
  readonly creep: number;
  readonly slip: { readonly atS: number; readonly share: number; readonly lastsS: number } | undefined;
  readonly release: { readonly kind: "exponential" | "ramp"; readonly spanS: number; readonly toN: number };
  /** Force it starts from: what the clamping before left. */
  readonly fromN: number;
};

export type Rise =
  | { readonly kind: "snap"; readonly frequency: number; readonly damping: number }
  | {
      readonly kind: "lag";
      readonly lagS: number;
      readonly ring: { readonly share: number; readonly periodS: number; readonly decayS: number };
    }
  | { readonly kind: "ramp"; readonly spanS: number }
  | { readonly kind: "strokes"; readonly strokes: number; readonly spanS: number }
  | { readonly kind: "steps"; readonly share: number; readonly waitS: number; readonly lagS: number };

/** Seconds from the start until the force has arrived: a ramp has ended, any other rise first passes 97 %. */
export function arrivalOf(rise: Rise): number {
  if (rise.kind === "ramp" || rise.kind === "strokes") return rise.spanS;
  const known = arrivals.get(rise);
  if (known !== undefined) return known;
  const stepS = (rise.kind === "snap" ? 0.2 / rise.frequency : rise.lagS) / 200;
  let t = rise.kind === "steps" ? rise.waitS : 0;
  while (riseAt(rise, t) < 0.97) t += stepS;
  arrivals.set(rise, t);
  return t;
}

const arrivals = new WeakMap<Rise, number>();

/** Seconds of one ring; undefined when it does not ring. */
export function ringPeriodOf(rise: Rise): number | undefined {
  if (rise.kind === "snap") return (2 * Math.PI) / dampedFrequency(rise);
  return rise.kind === "lag" && rise.ring.share > 0 ? rise.ring.periodS : undefined;
}

const dampedFrequency = (rise: { frequency: number; damping: number }) =>
  rise.frequency * Math.sqrt(1 - rise.damping ** 2);

/** Share of the level at `t`, without creep: 0 at the start, 1 at last. */
export function riseAt(rise: Rise, t: number): number {
  if (t <= 0) return 0;
  switch (rise.kind) {
    case "snap": {
      const { frequency, damping } = rise;
      const root = Math.sqrt(1 - damping ** 2);
      // Textbook step response of the second order.
      return 1 - (Math.exp(-damping * frequency * t) / root) * Math.sin(frequency * root * t + Math.acos(damping));
    }
    case "lag":
      return (
        1 -
        Math.exp(-t / rise.lagS) +
        rise.ring.share * Math.exp(-t / rise.ring.decayS) * Math.sin((2 * Math.PI * t) / rise.ring.periodS)
      );
    case "ramp":
      return Math.min(1, t / rise.spanS);
    case "strokes": {
      const stroke = rise.spanS / (2 * rise.strokes - 1); // pull and pause alternate; the last pull ends it
      const k = Math.floor(t / (2 * stroke));
      return Math.min(1, (k + Math.min(1, t / stroke - 2 * k)) / rise.strokes);
    }
    case "steps":
      return (
        rise.share * (1 - Math.exp(-t / rise.lagS)) +
        (t > rise.waitS ? (1 - rise.share) * (1 - Math.exp(-(t - rise.waitS) / rise.lagS)) : 0)
      );
  }
}

/** Force `t` after the start, newtons. */
export function forceAt(c: Clamping, t: number): number {
  const arrival = arrivalOf(c.rise);
  const released = arrival + c.holdS;
  if (t > released) {
    const from = heldAt(c, released, arrival);
    const since = t - released;
    const { kind, spanS, toN } = c.release;
    const left = kind === "exponential" ? Math.exp(-since / spanS) : Math.max(0, 1 - since / spanS);
    return toN + (from - toN) * left;
  }
  return heldAt(c, t, arrival);
}

function heldAt(c: Clamping, t: number, arrival: number): number {
  const since = t - arrival;
  const creep = since > 0 ? c.creep * Math.log10(1 + since / 0.1) : 0;
  let share = riseAt(c.rise, t) * (1 + creep);
  if (c.slip !== undefined && since > c.slip.atS)
    share *= 1 + c.slip.share * Math.min(1, (since - c.slip.atS) / c.slip.lastsS);
  return c.fromN + (c.levelN - c.fromN) * share;
}

/** A snap of 5 to 20 ms with some overshoot up to 30 %, as textbook or as a lag with a ring on it that dies away in the hold. */
export function drawSnap(random: Random, holdS: number): Rise {
  const riseS = random.between(0.005, 0.02);
  if (random.uniform() < 0.6) {
    const overshoot = random.between(0.01, 0.3);
    const x = Math.log(overshoot);
    const damping = -x / Math.sqrt(Math.PI ** 2 + x * x);
    // 10 % to 90 % takes about (1 + 1.1 z + 1.4 z^2) / w (common approximation, from memory).
    return { kind: "snap", frequency: (1 + 1.1 * damping + 1.4 * damping ** 2) / riseS, damping };
  }
  const periodS = 10 ** random.between(-1.7, -0.6);
  const share = random.between(0.02, 0.2);
  return {
    kind: "lag",
    lagS: riseS / 2.2,
    ring: { share, periodS, decayS: Math.min(periodS * random.between(0.4, 1.5), holdS / 10) },
  };
}

export function drawHand(random: Random): Rise {
  const spanS = random.between(1, 8);
  return random.uniform() < 0.7 ? { kind: "ramp", spanS } : { kind: "strokes", strokes: 2 + random.below(3), spanS };
}

export function drawSteps(random: Random): Rise {
  return {
    kind: "steps",
    share: random.between(0.3, 0.85),
    waitS: random.between(0.2, 1.2),
    lagS: random.between(0.01, 0.05),
  };
}
