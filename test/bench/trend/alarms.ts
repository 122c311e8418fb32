import { commonModes } from "../../../app/trend/commonMode.ts";
import { BASELINE_CHECKS, watchLevel } from "../../../app/trend/step/watchLevel.ts";
import { type WorksOptions, worksOfSpindles } from "../../support/worksOfSpindles.ts";
import { SeededRandom } from "../judgement/SeededRandom.ts";

/** Share of spindles that alarm within so many checks after the eight of the baseline; `step` in scatters, from the first on. */
export function alarmShare(step: number, checks: number, runs: number, seed: number): number {
  const random = new SeededRandom(seed);
  const values = new Float64Array(BASELINE_CHECKS + checks);
  let alarmed = 0;
  for (let run = 0; run < runs; run += 1) {
    for (let i = 0; i < values.length; i += 1) {
      values[i] = 20_000 + 200 * (random.normal() - (i < BASELINE_CHECKS ? 0 : step));
    }
    if (watchLevel(values)?.alarm !== undefined) alarmed += 1;
  }
  return alarmed / runs;
}

export type CommonModeTrial = {
  readonly name: string;
  /** Shares of runs: the one that is off was named; a gauge, or an adapter, that is not off was named. */
  readonly named: number;
  readonly gaugeWrongly: number;
  readonly adapterWrongly: number;
};

export function commonModeTrial(name: string, options: WorksOptions, runs: number, seed: number): CommonModeTrial {
  const random = new SeededRandom(seed);
  let [named, gaugeWrongly, adapterWrongly] = [0, 0, 0];
  for (let run = 0; run < runs; run += 1) {
    const found = commonModes(
      worksOfSpindles(
        () => random.normal(),
        () => random.unit(),
        options,
      ),
    );
    if (found.some((m) => m.id === options.off)) named += 1;
    if (found.some((m) => m.by === "gauge" && m.id !== options.off)) gaugeWrongly += 1;
    if (found.some((m) => m.by === "adapter" && m.id !== options.off)) adapterWrongly += 1;
  }
  return { name, named: named / runs, gaugeWrongly: gaugeWrongly / runs, adapterWrongly: adapterWrongly / runs };
}
