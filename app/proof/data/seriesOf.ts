import { averagedLoads } from "./averagedLoads.ts";
import type { ProofRun } from "./netReadings.ts";
import type { Direction } from "./ProofReading.ts";
import type { ProofRemark } from "./ProofRemark.ts";

/** One load of one series, the zero taken off. */
export type LoadPoint = {
  /** Step number from 0 by rising load, common to all series. */
  readonly level: number;
  readonly reference: number;
  readonly net: number;
};

/** The readings of one run, by direction; a load that stands twice is averaged. */
export type ProofSeries = {
  readonly run: string;
  readonly positionDeg: number | undefined;
  readonly up: readonly LoadPoint[];
  readonly down: readonly LoadPoint[];
  /** Indications, not net; undefined where none was read. */
  readonly zeroBefore: number | undefined;
  readonly zeroAfter: number | undefined;
  readonly creep30: number | undefined;
  readonly creep300: number | undefined;
};

export type SortedProof = { readonly series: readonly ProofSeries[]; readonly remarks: readonly ProofRemark[] };

/** Sorts each run by direction and load, and remarks what does not look like a plain series. */
export function seriesOf(runs: readonly ProofRun[]): SortedProof {
  const remarks: ProofRemark[] = [];
  const series = runs.map((run): ProofSeries => {
    const other = (direction: Direction) => run.others.find((r) => r.direction === direction)?.indication;
    remarkFalls(run, remarks);
    return {
      run: run.run,
      positionDeg: run.positionDeg,
      up: points(run, "up", remarks),
      down: points(run, "down", remarks),
      zeroBefore: other("zeroBefore"),
      zeroAfter: other("zeroAfter"),
      creep30: other("creep30"),
      creep300: other("creep300"),
    };
  });
  if (runs.every((run) => run.zero === undefined)) remarks.push({ code: "zeroMissing" });
  return { series, remarks };
}

function remarkFalls({ run, loads }: ProofRun, remarks: ProofRemark[]): void {
  const up = loads.filter((l) => l.reading.direction === "up");
  const fall = up.findIndex((l, i) => i > 0 && l.level < up[i - 1]!.level);
  if (fall < 1) return;
  remarks.push({
    code: "loadOutOfOrder",
    about: `run ${run}, ${up[fall]!.reading.reference} after ${up[fall - 1]!.reading.reference}`,
  });
}

function points({ run, loads }: ProofRun, direction: Direction, remarks: ProofRemark[]): readonly LoadPoint[] {
  const averaged = averagedLoads(loads.filter((l) => l.reading.direction === direction));
  for (const { n, reference } of averaged)
    if (n > 1) remarks.push({ code: "loadTwice", about: `run ${run}, ${reference}` });
  return averaged.map(({ level, reference, net }) => ({ level, reference, net }));
}
