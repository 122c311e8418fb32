import type { NetReading } from "../data/netReadings.ts";
import type { Variance } from "../uncertainty/curveVariance.ts";

export type ErrorVariances = {
  /** Variances of the mean error at a load with so many readings, in squared units of the reference. */
  readonly at: (reference: number, n: number) => { readonly within: Variance; readonly between: Variance | undefined };
  /** Standard deviation of single readings within a run. */
  readonly readingSd: number;
};

/**
 * How repeated errors scatter, pooled over all steps: a part that whole runs have in common and that grows with the
 * load (mounting anew), and a part of single readings that does not.
 * @param loads  rising loads of all runs, indication in the reference's unit
 * @param named  whether the readings say which run they belong to
 * @returns  undefined when no step was read twice
 * @see Searle, Casella, McCulloch, Variance Components, ch. 3 and 4
 */
export function errorVariances(loads: readonly NetReading[], named: boolean): ErrorVariances | undefined {
  const steps = [...Map.groupBy(loads, (l) => l.level).values()];
  const rest: { run: string; load: number; error: number }[] = [];
  let squares = 0;
  for (const step of steps) {
    const mean = step.reduce((sum, l) => sum + errorOf(l), 0) / step.length;
    for (const l of step) {
      const error = errorOf(l) - mean;
      squares += error * error;
      rest.push({ run: l.reading.run ?? "", load: l.reading.reference, error });
    }
  }
  const df = loads.length - steps.length;
  if (df < 1) return undefined;
  const runs = named ? [...Map.groupBy(rest, (r) => r.run).values()] : [];
  const betweenDf = runs.length - 1;
  const withinDf = df - betweenDf;
  const pooled = squares / df;
  if (betweenDf < 1 || withinDf < 1) {
    return {
      at: (_, n) => ({ within: { variance: pooled / n, degreesOfFreedom: df }, between: undefined }),
      readingSd: Math.sqrt(pooled),
    };
  }
  let shared = 0;
  let perRun = 0; // sum of squared loads of a run, on average
  for (const run of runs) {
    const square = run.reduce((sum, r) => sum + r.load * r.load, 0);
    const product = run.reduce((sum, r) => sum + r.load * r.error, 0);
    if (square > 0) shared += (product * product) / square;
    perRun += square / runs.length;
  }
  const betweenMeanSquare = shared / betweenDf;
  const withinMeanSquare = Math.max(0, squares - shared) / withinDf;
  const at = (reference: number, n: number) => {
    const along = perRun > 0 ? Math.min(1, (reference * reference) / perRun) : 0;
    return {
      within: { variance: ((1 - along) * withinMeanSquare) / n, degreesOfFreedom: withinDf },
      between: { variance: (along * betweenMeanSquare) / n, degreesOfFreedom: betweenDf },
    };
  };
  return { at, readingSd: Math.sqrt(withinMeanSquare) };
}

const errorOf = (l: NetReading) => l.net - l.reading.reference;
