import { levelsOf } from "./levelsOf.ts";
import type { ProofReading } from "./ProofReading.ts";

/** A load with the zero of its run taken off. */
export type NetReading = {
  readonly reading: ProofReading;
  readonly net: number;
  /** Load step from 0 by rising load, common to all runs. */
  readonly level: number;
};

/** What was read without a break at one mounting position. */
export type ProofRun = {
  readonly run: string;
  readonly positionDeg: number | undefined;
  readonly loads: readonly NetReading[];
  readonly others: readonly ProofReading[]; // zeros and creep
  /** The zero taken off: its own before the loads, else the last read before it; undefined when there was none. */
  readonly zero: number | undefined;
};

/**
 * Cuts a proof's readings into runs and takes the zeros off. Readings without a run label are cut where the position
 * changes or the loading starts again.
 * @param readings  in the order they were taken
 */
export function netReadings(readings: readonly ProofReading[]): readonly ProofRun[] {
  const loads = readings.filter((r) => r.direction === "up" || r.direction === "down");
  const levels = levelsOf(loads);
  const levelOf = new Map(loads.map((r, i) => [r, levels[i]!]));
  let zero: number | undefined;
  return cutIntoRuns(readings).map(({ run, members }) => {
    zero = members.find((r) => r.direction === "zeroBefore")?.indication ?? zero;
    const off = zero ?? 0;
    return {
      run,
      positionDeg: members.find((r) => r.positionDeg !== undefined)?.positionDeg,
      loads: members
        .filter((r) => levelOf.has(r))
        .map((reading) => ({ reading, net: reading.indication - off, level: levelOf.get(reading)! })),
      others: members.filter((r) => !levelOf.has(r)),
      zero,
    };
  });
}

type Members = { readonly run: string; positionDeg: number | undefined; readonly members: ProofReading[] };

function cutIntoRuns(readings: readonly ProofReading[]): readonly Members[] {
  const runs: Members[] = [];
  const byLabel = new Map<string, Members[]>();
  let last: ProofReading | undefined;
  let counted = 0;
  for (const r of readings) {
    if (r.run === undefined && (last === undefined || startsAgain(last, r))) counted += 1;
    const run = r.run ?? String(counted);
    const same = byLabel.get(run) ?? [];
    // A zero or creep row may leave the position out: it belongs to the run as it stands.
    const known = same.findLast(
      (k) => r.positionDeg === undefined || k.positionDeg === undefined || k.positionDeg === r.positionDeg,
    );
    if (known === undefined) {
      const fresh = { run, positionDeg: r.positionDeg, members: [r] };
      runs.push(fresh);
      byLabel.set(run, [...same, fresh]);
    } else {
      known.members.push(r);
      known.positionDeg ??= r.positionDeg;
    }
    last = r;
  }
  return runs;
}

function startsAgain(last: ProofReading, next: ProofReading): boolean {
  if (next.positionDeg !== undefined && last.positionDeg !== undefined && next.positionDeg !== last.positionDeg)
    return true;
  if (next.direction === "zeroBefore") return last.direction !== "zeroBefore";
  if (next.direction !== "up" || last.direction === "zeroBefore") return false;
  return last.direction !== "up" || next.reference <= last.reference;
}
