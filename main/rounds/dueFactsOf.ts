import type { FleetView } from "../../app/contract/recordViews.ts";
import type { Works } from "../../app/ledger/register.ts";
import { counterPace } from "../../app/round/due/counterPace.ts";
import type { DueFacts } from "../../app/round/due/DueFacts.ts";
import { daysOf } from "../../app/round/due/plainDays.ts";
import type { Db } from "../store/db.ts";
import { checkPage, readCheck } from "../store/records/checks.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import { type SpindleStanding, spindleList } from "../store/records/spindles.ts";
import { worksDay } from "./worksDay.ts";

/** So many last checks are looked at for counters. */
const COUNTED = 8;

/** What the records say about when each spindle in use is due. @param fleet  forecasts; undefined while they are not known */
export function dueFacts(db: Db, works: Works, fleet: Pick<FleetView, "rows"> | undefined): DueFacts[] {
  const forecasts = new Map(fleet?.rows.map((row) => [row.spindleId, row.forecast]));
  return spindleList(db)
    .filter(({ spindle }) => spindle.state === "inUse")
    .map((standing) => dueFactsOf(db, works, standing, forecasts.get(standing.spindle.spindleId)));
}

/** What they say of one. */
export function dueFactsOf(
  db: Db,
  works: Works,
  { spindle, last, stop }: SpindleStanding,
  forecast: Pick<FleetView["rows"][number]["forecast"], "state" | "lowMs" | "atMs"> | undefined,
): DueFacts {
  const day = (ms: number) => worksDay(ms, works.timeZone);
  const notes = spindle.intervalToolChanges === undefined ? [] : counters(db, spindle.spindleId, day);
  const newest = notes.at(-1);
  const lastOn = last && day(last.measuredAtMs);
  const event = serviceEvents(db, spindle.spindleId).findLast(
    (e) => lastOn === undefined || e.at > lastOn || (e.at === lastOn && last?.reason === "beforeService"),
  );
  const early = forecast?.state === "crosses" ? (forecast.lowMs ?? forecast.atMs) : undefined;
  return {
    spindleId: spindle.spindleId,
    intervalDays: spindle.intervalDays ?? works.intervalDays,
    intervalToolChanges: spindle.intervalToolChanges,
    last:
      last === undefined || lastOn === undefined
        ? undefined
        : {
            on: lastOn,
            verdict: last.verdict,
            remeasure: last.remeasure,
            counter: newest?.on === lastOn ? newest.counter : undefined,
          },
    stopped: stop !== undefined,
    changesPerDay: counterPace(notes.map(({ on, counter }) => ({ day: daysOf(on), counter }))),
    counterSince: event?.counter === undefined ? undefined : { on: event.at, counter: event.counter },
    limitFrom: early === undefined || !Number.isFinite(early) || early > 8.64e15 ? undefined : day(early),
    event: event && { on: event.at, kind: event.kind === "crash" ? "crash" : "service" },
  };
}

function counters(db: Db, spindleId: string, day: (ms: number) => string) {
  return checkPage(db, spindleId, COUNTED)
    .filter((row) => row.voided === undefined)
    .flatMap((row) => {
      const counter = readCheck(db, row.checkId)?.check.counter;
      return counter == null ? [] : [{ on: day(row.measuredAtMs), counter }];
    })
    .reverse();
}
