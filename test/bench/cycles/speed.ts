import { CycleDetector } from "../../../app/cycle/CycleDetector.ts";
import { median } from "../../../app/numerics/median.ts";
import { Random } from "../../../simulator/physics/Random.ts";
import type { BenchRow } from "../BenchRow.ts";
import { FindPeaks } from "./FindPeaks.ts";

const readings = 2_000_000;
const runs = 9;
const rateHz = 2000;

/** A clamping of 15 kN every eight seconds, held for four, with 10 N of noise. */
function clamps(): Float64Array {
  const random = new Random(7);
  return Float64Array.from({ length: readings }, (_, i) => {
    const t = (i / rateHz) % 8;
    const share = t < 2 ? 0 : t < 2.01 ? (t - 2) * 100 : t < 6 ? 1 : t < 6.05 ? (6.05 - t) * 20 : 0;
    return 15_000 * share + 10 * random.normal();
  });
}

function slowWalk(): Float64Array {
  const random = new Random(8);
  let x = 0;
  return Float64Array.from({ length: readings }, () => {
    x += random.normal();
    return x;
  });
}

/** Seconds of the processor, of all threads, that the detector takes for an array: others may be at work beside us. */
function ours(values: Float64Array, rate: number): number {
  const detector = new CycleDetector({ rateHz: rate }, () => {});
  const began = process.cpuUsage();
  for (let i = 0; i < values.length; i += 1) detector.push(values[i]!, "live", Number.NaN);
  detector.end();
  const { user, system } = process.cpuUsage(began);
  return (user + system) / 1e6;
}

const nanoseconds = (seconds: number) => (seconds * 1e9) / readings;

/** Against a general-purpose peak finder on the same arrays, in turn; on a walk against ourselves; and by rate. */
export async function speedRows(): Promise<BenchRow[]> {
  const arrays = { clamps: clamps(), walk: slowWalk() };
  const peaks = await FindPeaks.start();
  const path = peaks?.load(arrays.clamps);
  const times = { ours: [] as number[], theirs: [] as number[], walk: [] as number[], fast: [] as number[] };
  ours(arrays.clamps, rateHz);
  for (let run = 0; run < runs; run += 1) {
    times.ours.push(ours(arrays.clamps, rateHz));
    if (peaks !== undefined && path !== undefined) times.theirs.push(await peaks.time(path, 5000, 200));
    times.walk.push(ours(arrays.walk, rateHz));
    times.fast.push(ours(arrays.clamps, 10_000));
  }
  peaks?.stop();
  const own = median(times.ours);
  const walk = median(times.walk) / own;
  return [
    againstFindPeaks(own, times.theirs),
    { name: "slow random walk, against our own clampings", measured: walk, limit: 1.2, unit: "x", met: walk <= 1.2 },
    share(2000, own, 1),
    share(10_000, median(times.fast), 4),
  ];
}

function againstFindPeaks(own: number, theirs: readonly number[]): BenchRow {
  const name = "a reading, against SciPy find_peaks(prominence, width) on the same 2,000,000";
  const row = { name, limit: 1, unit: "x" };
  if (theirs.length === 0) {
    process.stderr.write("SKIPPED: no Python with SciPy here; the comparison with find_peaks was not made\n");
    return { ...row, measured: Number.NaN, met: false, note: "not measured: no Python with SciPy here" };
  }
  const ratio = own / median(theirs);
  const note = `${nanoseconds(own).toFixed(0)} ns against ${nanoseconds(median(theirs)).toFixed(0)} ns, medians of ${theirs.length} runs in turn`;
  return { ...row, measured: ratio, met: ratio <= 1, note };
}

/** Seconds of work for `readings`, which last `readings / rate` seconds. */
function share(rate: number, seconds: number, limit: number): BenchRow {
  const percent = (100 * seconds * rate) / readings;
  return { name: `share of one core at ${rate / 1000} kHz`, measured: percent, limit, unit: "%", met: percent < limit };
}
