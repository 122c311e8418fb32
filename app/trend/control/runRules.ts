/** Classical rules on single values, by what they look for; distances are in standard deviations from the center. */
export type RunRule =
  | "beyondThree" // one value beyond 3
  | "nineOneSide" // nine in a row on one side
  | "sixRising" // six in a row steadily rising or falling
  | "fourteenAlternating" // fourteen in a row up and down in turn
  | "twoOfThreeBeyondTwo" // two of three beyond 2, same side
  | "fourOfFiveBeyondOne" // four of five beyond 1, same side
  | "fifteenWithinOne" // fifteen in a row within 1
  | "eightBeyondOne" // eight in a row beyond 1, either side
  | "eightOneSide"; // eight in a row on one side: the zone rules' version

export type RunSignal = {
  readonly rule: RunRule;
  /** Value that completes the pattern, counted from 1. */
  readonly at: number;
};

/**
 * The default: one false alarm in 370 unchanged values when the limits are known. The four zone rules together give
 * one in 92, all eight of the list still more, so that most alarms of a healthy spindle would be false.
 */
export const defaultRunRules: readonly RunRule[] = Object.freeze(["beyondThree"] as const);

/** The four zone rules: an average of 91.75 values to the first false alarm (e-Handbook 6.3.2). */
export const zoneRules: readonly RunRule[] = Object.freeze([
  "beyondThree",
  "twoOfThreeBeyondTwo",
  "fourOfFiveBeyondOne",
  "eightOneSide",
] as const);

/** Rules 1 to 8 of Nelson's list, in its order. */
export const allRunRules: readonly RunRule[] = Object.freeze([
  "beyondThree",
  "nineOneSide",
  "sixRising",
  "fourteenAlternating",
  "twoOfThreeBeyondTwo",
  "fourOfFiveBeyondOne",
  "fifteenWithinOne",
  "eightBeyondOne",
] as const);

/**
 * Where the chosen run rules are met. `twoOfThree` and `fourOfFive` signal at a value that is itself beyond its line.
 * @param z  values less the center, in standard deviations, in the order they came
 * @returns  by value, then in the order of `rules`
 * @see L. S. Nelson, Journal of Quality Technology 16 (1984) 237; NIST/SEMATECH e-Handbook 6.3.2
 */
export function runRules(z: ArrayLike<number>, rules: readonly RunRule[] = defaultRunRules): RunSignal[] {
  const signals: RunSignal[] = [];
  for (let i = 0; i < z.length; i += 1) {
    for (const rule of rules) if (tests[rule](z, i)) signals.push({ rule, at: i + 1 });
  }
  return signals;
}

type Test = (z: ArrayLike<number>, i: number) => boolean;

const tests: Readonly<Record<RunRule, Test>> = {
  beyondThree: (z, i) => Math.abs(z[i]!) > 3,
  nineOneSide: (z, i) => oneSide(z, i, 9),
  sixRising: (z, i) => last(z, i, 5, (k) => Math.sign(z[k]! - z[k - 1]!) === direction(z, i)) && direction(z, i) !== 0,
  fourteenAlternating: (z, i) => i >= 13 && last(z, i, 12, (k) => direction(z, k) * direction(z, k - 1) === -1),
  twoOfThreeBeyondTwo: (z, i) => mostBeyond(z, i, 2, 3, 2),
  fourOfFiveBeyondOne: (z, i) => mostBeyond(z, i, 4, 5, 1),
  fifteenWithinOne: (z, i) => i >= 14 && last(z, i, 15, (k) => Math.abs(z[k]!) < 1),
  eightBeyondOne: (z, i) => i >= 7 && last(z, i, 8, (k) => Math.abs(z[k]!) > 1),
  eightOneSide: (z, i) => oneSide(z, i, 8),
};

const direction = (z: ArrayLike<number>, i: number) => (i > 0 ? Math.sign(z[i]! - z[i - 1]!) : 0);

/** Whether the last `count` places up to i all pass; false where there are not so many before the first. */
function last(z: ArrayLike<number>, i: number, count: number, passes: (k: number) => boolean): boolean {
  if (i - count + 1 < 0 || i >= z.length) return false;
  for (let k = i; k > i - count; k -= 1) if (!passes(k)) return false;
  return true;
}

function oneSide(z: ArrayLike<number>, i: number, count: number): boolean {
  const side = Math.sign(z[i]!);
  return side !== 0 && last(z, i, count, (k) => Math.sign(z[k]!) === side);
}

function mostBeyond(z: ArrayLike<number>, i: number, needed: number, of: number, line: number): boolean {
  const side = Math.sign(z[i]!);
  if (side * z[i]! <= line) return false;
  let count = 0;
  for (let k = Math.max(0, i - of + 1); k <= i; k += 1) if (side * z[k]! > line) count += 1;
  return count >= needed;
}
