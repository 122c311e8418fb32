import type { Cycle, CycleFlag, Rest } from "./Cycle.ts";
import type { Trace } from "./phase/Trace.ts";
import type { CycleFound } from "./read/readCycle.ts";

const flagOrder: readonly CycleFlag[] = [
  "overload",
  "unstable",
  "spike",
  "notReleased",
  "peakHold",
  "short",
  "coarse",
  "cut",
];

export function inOrder(flags: ReadonlySet<CycleFlag>): CycleFlag[] {
  return flagOrder.filter((flag) => flags.has(flag));
}

export type ZeroTaken = { readonly indicationN: number; readonly standardN: number };

/** Puts a found clamping into stream places, seconds and net forces. */
export function buildCycle(found: CycleFound, trace: Trace, zero: ZeroTaken, restBefore: Rest | undefined): Cycle {
  const { settled } = found;
  const gross: Cycle = {
    startIndex: trace.placeOf(found.start),
    endIndex: trace.placeOf(found.end),
    startS: trace.timeOf(found.start),
    endS: trace.timeOf(found.end),
    peakN: found.peakIndicationN,
    peakIndex: found.peakIndex,
    settledN: settled?.indication,
    settledUncertaintyN: undefined,
    settledWindow: settled && {
      fromIndex: trace.placeOf(settled.fromIndex),
      toIndex: trace.placeOf(settled.toIndex),
      n: settled.n,
      effectiveN: settled.effectiveN,
    },
    settledFromS: settled && trace.timeOf(settled.fromIndex),
    settledToS: settled && trace.timeOf(settled.toIndex),
    overshoot: undefined,
    riseTimeS: found.riseTimeS,
    noiseN: settled?.noiseN,
    slopeNPerS: settled?.slopeNPerS,
    creep: settled?.creepN === undefined ? undefined : settled.creepN / settled.indication,
    zeroBeforeN: restBefore?.indicationN,
    zeroAfterN: undefined,
    zeroN: 0,
    flags: inOrder(found.flags),
    holdUncertaintyN: settled?.standardN,
    restBefore,
    restAfter: undefined,
  };
  return withZero(gross, zero);
}

/** The same cycle counted from another zero. Gross forces, and what does not depend on the zero, stay. */
export function withZero(cycle: Cycle, zero: ZeroTaken): Cycle {
  const shift = cycle.zeroN - zero.indicationN;
  const peakN = cycle.peakN + shift;
  const settledN = cycle.settledN === undefined ? undefined : cycle.settledN + shift;
  return {
    ...cycle,
    zeroN: zero.indicationN,
    peakN,
    settledN,
    settledUncertaintyN:
      cycle.holdUncertaintyN === undefined ? undefined : Math.hypot(cycle.holdUncertaintyN, zero.standardN),
    overshoot: share(settledN === undefined ? undefined : peakN - settledN, settledN),
    creep: share(
      cycle.creep === undefined || cycle.settledN === undefined ? undefined : cycle.creep * cycle.settledN,
      settledN,
    ),
  };
}

/** A fraction of the settled force; undefined where that is not above 0. */
function share(part: number | undefined, settledN: number | undefined): number | undefined {
  return part === undefined || settledN === undefined || !(settledN > 0) ? undefined : part / settledN;
}
