import { median } from "../../../app/numerics/median.ts";
import { studentQuantile } from "../../../app/numerics/studentQuantile.ts";
import { courseOf } from "../../../app/trend/courseOf.ts";
import type { History } from "../../../app/trend/History.ts";
import { leastSquaresLine } from "../../../app/trend/leastSquaresLine.ts";
import { reachInterval } from "../../../app/trend/reachInterval.ts";
import { SeededRandom } from "../judgement/SeededRandom.ts";

export type ForecastTrial = {
  readonly n: number;
  /** Fall over the span, in scatters between checks. */
  readonly fall: number;
  /** How far past the last check the limit lies, in spans. */
  readonly ahead: number;
  /** Shares of all runs; an interval without an end counts as covering, and as unbounded. */
  readonly covered: number;
  readonly unbounded: number;
  readonly untold: number;
  /** Median of the interval's width over that of Fieller's from all checks. */
  readonly width: number;
};

const DAY_MS = 86_400_000;
const SPAN_DAYS = 720;

/** 90 % forecasts of made-up spindles whose true date is known: 20 kN, 1 % scatter, a straight fall, no step. */
export function forecastTrial(n: number, fall: number, ahead: number, runs: number, seed: number): ForecastTrial {
  const random = new SeededRandom(seed);
  const sigma = 200;
  const limit = 20_000 - fall * sigma * (1 + ahead);
  const truth = SPAN_DAYS * (1 + ahead);
  const x = Float64Array.from({ length: n }, (_, i) => (SPAN_DAYS * i) / (n - 1));
  let [covered, unbounded, untold] = [0, 0, 0];
  const widths: number[] = [];
  for (let run = 0; run < runs; run += 1) {
    const y = x.map((t) => 20_000 - (fall * sigma * t) / SPAN_DAYS + sigma * random.normal());
    const { low, high, state } = courseOf(historyOf(x, y, limit)).forecasts[0]!;
    if (state === "cannotTell") untold += 1;
    if (low === undefined || high === undefined) {
      unbounded += 1;
      covered += 1;
      continue;
    }
    if (low <= truth && truth <= high) covered += 1;
    const fieller = reachInterval(leastSquaresLine(x, y)!, limit, { t: studentQuantile(0.95, n - 2) });
    if (fieller !== undefined) widths.push((high - low) / (fieller.high - fieller.low));
  }
  const share = (count: number) => count / runs;
  const width = widths.length === 0 ? Number.NaN : median(widths);
  return { n, fall, ahead, covered: share(covered), unbounded: share(unbounded), untold: share(untold), width };
}

function historyOf(x: Float64Array, y: Float64Array, minimumN: number): History {
  const points = Array.from(x, (t, i) => ({
    checkId: `${i}`,
    atMs: 1.9e12 + t * DAY_MS,
    valueN: y[i]!,
    verdict: "good" as const,
  }));
  return { spindleId: "s", points, events: [], limits: { minimumN } };
}
