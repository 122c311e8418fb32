/** How a column of numbers goes on from line to line, when it is a counter or a clock. */
export type Progress = {
  readonly kind: "counter" | "clock";
  /** Mean step from line to line. */
  readonly step: number;
  /** It stands still over several lines and then steps: too coarse to stamp a line. */
  readonly coarse: boolean;
};

/**
 * Tells counters and clocks from forces: a counter rises by one from line to line, a clock by another step that
 * stays nearly the same, or stands and then steps by the same amount. Wraps and damaged lines are few and do no harm.
 * @param column  values in the order of their lines
 * @param orders  the places of those lines; steps over lines left out are not looked at
 */
export function progressOf(column: readonly number[], orders: readonly number[]): Progress | undefined {
  const pace = typicalStep(orders);
  const steps: number[] = [];
  for (let i = 1; i < column.length; i += 1) {
    if (orders[i]! - orders[i - 1]! === pace) steps.push(column[i]! - column[i - 1]!);
  }
  if (steps.length < 2) return undefined;
  const share = (test: (step: number) => boolean) => steps.filter(test).length / steps.length;
  const whole = column.every(Number.isInteger);
  if (whole && share((step) => step === 1) >= 0.75) return { kind: "counter", step: 1, coarse: false };
  return steadyClock(steps, whole) ?? coarseClock(column, orders, steps);
}

/** Whether a column of whole numbers counts up with every line, whatever it counts. */
export function isSteady(column: readonly number[]): boolean {
  const places = column.map((_, i) => i);
  return progressOf(column, places)?.coarse === false;
}

function steadyClock(steps: readonly number[], whole: boolean): Progress | undefined {
  const sorted = [...steps].sort((a, b) => a - b);
  const middle = sorted[sorted.length >> 1]!;
  if (middle <= 0 || steps.filter((step) => step < 0).length > 0.13 * steps.length) return undefined;
  const slack = Math.max(whole ? 1 : 0, 0.25 * middle) + 1e-9 * middle;
  const near = steps.filter((step) => step > 0 && Math.abs(step - middle) <= slack);
  if (near.length < 0.75 * steps.length || (whole && middle < 2 && near.every((step) => step === 1))) return undefined;
  return { kind: "clock", step: near.reduce((sum, step) => sum + step, 0) / near.length, coarse: false };
}

function coarseClock(
  column: readonly number[],
  orders: readonly number[],
  steps: readonly number[],
): Progress | undefined {
  const still = steps.filter((step) => step === 0).length;
  const up = steps.filter((step) => step > 0).sort((a, b) => a - b);
  const down = steps.length - still - up.length; // a wrap, or a damaged value; a flag goes down as often as up
  if (down > Math.max(1, 0.3 * up.length)) return undefined;
  if (still < 0.3 * steps.length || up.length < 3 || still + up.length < 0.93 * steps.length) return undefined;
  const middle = up[up.length >> 1]!;
  // A damaged value makes another step and is passed over.
  const changes = column.flatMap((value, i) =>
    Math.abs(value - (column[i - 1] ?? value) - middle) <= 1e-6 * middle ? [i] : [],
  );
  if (changes.length < 0.8 * up.length || !isEven(changes, column.length)) return undefined;
  const lines = (orders[changes.at(-1)!]! - orders[changes[0]!]!) / typicalStep(orders);
  return { kind: "clock", step: ((changes.length - 1) * middle) / lines, coarse: true };
}

/** A clock steps all the time at even distances; a force rises at once and then stands. */
function isEven(changes: readonly number[], length: number): boolean {
  const gaps = changes.slice(1).map((at, i) => at - changes[i]!);
  const usual = [...gaps].sort((a, b) => a - b)[gaps.length >> 1]!;
  const even = gaps.filter((gap) => Math.abs(gap - usual) <= Math.max(1, 0.25 * usual)).length;
  const covered = changes[0]! <= 2.5 * usual + 1 && length - changes.at(-1)! <= 2.5 * usual + 1;
  return usual >= 1 && even >= 0.7 * gaps.length && covered;
}

/** The usual distance between lines of one form: two where each is preceded by an echo. */
export function typicalStep(orders: readonly number[]): number {
  const counts = new Map<number, number>();
  for (let i = 1; i < orders.length; i += 1) {
    const step = orders[i]! - orders[i - 1]!;
    counts.set(step, (counts.get(step) ?? 0) + 1);
  }
  let best = 1;
  let most = 0;
  for (const [step, n] of counts) if (n > most) [best, most] = [step, n];
  return best;
}
