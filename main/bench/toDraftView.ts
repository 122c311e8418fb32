import type { CycleView, Draft } from "../../app/contract/seriesViews.ts";
import type { Cycle } from "../../app/cycle/Cycle.ts";
import type { DraftState } from "./DraftState.ts";
import type { Formed } from "./form.ts";

/** The series in work as pages see it. */
export function toDraftView(state: DraftState, formed: Formed, readOnly: boolean): Draft {
  const { cycles: _cycles, sessions: _sessions, overrides: _overrides, typed, ...said } = state;
  return {
    ...said,
    cycles: state.cycles.map((c, i) => toCycleView(c.cycleId, i + 1, formed.cycles[i] ?? c.cycle, c.dropped)),
    typed: typed && { valueN: typed.valueN, text: typed.text },
    figures: formed.figures,
    forming: formed.forming,
    warnings: formed.warnings,
    cannotFile: readOnly ? "readOnly" : formed.cannotFile,
  };
}

export function toCycleView(
  cycleId: string,
  number: number,
  cycle: Cycle,
  dropped: { readonly reason: string } | undefined,
): CycleView {
  const { settledFromS, settledToS } = cycle;
  return {
    cycleId,
    number,
    startS: cycle.startS,
    endS: cycle.endS,
    peakN: cycle.peakN,
    settledN: cycle.settledN,
    settledUncertaintyN: cycle.settledUncertaintyN,
    windowS: settledFromS === undefined || settledToS === undefined ? undefined : [settledFromS, settledToS],
    overshoot: cycle.overshoot,
    riseTimeS: cycle.riseTimeS,
    noiseN: cycle.noiseN,
    creep: cycle.creep,
    slopeNPerS: cycle.slopeNPerS,
    zeroBeforeN: cycle.zeroBeforeN,
    zeroAfterN: cycle.zeroAfterN,
    flags: cycle.flags,
    dropped,
  };
}
