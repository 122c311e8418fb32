/**
 * A clamping unit in numbers: force at the tool = springs x wedge - friction. The figures of its faults are common
 * practice, no source: one disc of a long stack costs about 1 to 5 %, a dry gripper loses force and scatters.
 */
export type ClampingUnit = {
  /** Force of the whole pack at the clamped position when new, newtons. */
  readonly springN: number;
  readonly discs: number;
  readonly brokenDiscs: number;
  /** Share of the springs' force lost by settling, 0 to 1. */
  readonly tired: number;
  /** What the gripper makes of the springs' force; 1 where it pulls the knob directly. */
  readonly wedgeRatio: number;
  /** 0: freshly greased, 1: dry and dirty. */
  readonly dryness: number;
};

const FRICTION_GREASED = 0.08; // share of the force lost in a clean, greased gripper
const FRICTION_DRY = 0.3;
const SCATTER_GREASED = 0.002; // from clamping to clamping, relative standard deviation
const SCATTER_DRY = 0.025;
const DISC_WEIGHT = 2.5; // a broken disc costs more than its share: its neighbours tilt and lose stroke

/** A greased unit with sound springs that holds with `forceN`. */
export function soundUnit(forceN: number, wedgeRatio = 1, discs = 120): ClampingUnit {
  if (!(forceN > 0)) throw new RangeError(`soundUnit requires a force above zero, got ${forceN}`);
  const springN = forceN / (wedgeRatio * (1 - FRICTION_GREASED));
  return { springN, discs, brokenDiscs: 0, tired: 0, wedgeRatio, dryness: 0 };
}

/** The force it holds with on average, newtons. */
export function meanForceN(unit: ClampingUnit): number {
  const whole = Math.max(0, 1 - (DISC_WEIGHT * unit.brokenDiscs) / unit.discs);
  const springs = unit.springN * (1 - unit.tired) * whole;
  return springs * unit.wedgeRatio * (1 - between(FRICTION_GREASED, FRICTION_DRY, unit.dryness));
}

/** Relative standard deviation of the force from one clamping to the next. */
export function scatterOf(unit: ClampingUnit): number {
  return between(SCATTER_GREASED, SCATTER_DRY, unit.dryness);
}

/** A dry gripper creeps: the force still changes by this share per decade of time. */
export function creepOf(unit: ClampingUnit): number {
  return between(0.0015, 0.012, unit.dryness);
}

const between = (low: number, high: number, share: number) => low + (high - low) * Math.min(1, Math.max(0, share));
