import type { RoundView, StopView } from "../../app/contract/roundViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import type { Round } from "../../app/ledger/round.ts";
import type { Db } from "../store/db.ts";
import { readSpindle, type SpindleStanding } from "../store/records/spindles.ts";
import { roundVersion } from "./roundVersion.ts";
import { worksDay } from "./worksDay.ts";

/** A round as pages see it: its stops with what the register says of them today, and what was measured since. */
export function toRoundView(db: Db, round: Round, works: Works): RoundView {
  return {
    roundId: round.roundId,
    version: roundVersion(round),
    name: round.name,
    on: round.on,
    state: round.state,
    gaugeId: round.gaugeId ?? undefined,
    operatorId: round.operatorId ?? undefined,
    stops: round.stops.flatMap((stop) => {
      const standing = readSpindle(db, stop.spindleId);
      return standing === undefined ? [] : [toStopView(standing, stop, round.on, works)];
    }),
    found: round.found,
    adapterChanges: round.adapterChanges,
    walk: round.walk,
    note: round.note ?? "",
  };
}

/** @param since  a check of this day or later counts as made on the round; undefined: none does */
export function toStopView(
  { spindle, last }: SpindleStanding,
  stop: Pick<Round["stops"][number], "adapterId" | "location" | "expectedN" | "passed">,
  since: string | undefined,
  works: Works,
): StopView {
  const isDone = last !== undefined && since !== undefined && worksDay(last.measuredAtMs, works.timeZone) >= since;
  return {
    spindleId: spindle.spindleId,
    name: spindle.name,
    machine: spindle.machine,
    area: spindle.area,
    taper: spindle.taper,
    adapterId: stop.adapterId ?? undefined,
    location: stop.location ?? undefined,
    expectedN: stop.expectedN ?? undefined,
    limits: spindle.limits,
    passed: stop.passed && { as: stop.passed.as, why: stop.passed.why },
    retired: spindle.state !== "inUse",
    done: isDone ? { checkId: last.checkId, valueN: last.valueN } : undefined,
  };
}
