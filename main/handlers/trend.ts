import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import { forecastInFile } from "../fleet/forecastInFile.ts";
import { trendInFile } from "../fleet/trendInFile.ts";
import { dueNow } from "../rounds/dueNow.ts";
import { checkPage } from "../store/records/checks.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { toCheckRow, toSpindleRow } from "./rows.ts";

/** Checks a page shows at once; the rest comes by `checks.list`. */
const SHOWN = 100;

/** Where each spindle is going, and the order in which to look after all. */
export function trendHandlers(context: Context): Pick<Handlers, "spindles.page" | "spindles.fleet"> {
  const { store, fleet, works, now } = context;
  return {
    "spindles.page": ({ spindleId, xAxis }) => {
      const standing = readSpindle(store.db, spindleId);
      if (standing === undefined) {
        throw new AppError("notFound", "There is no such spindle in this data file.", { key: "noSpindle" });
      }
      const checks = checkPage(store.db, spindleId, SHOWN + 1);
      const { trend, detailed } = trendInFile(store.db, standing, { xAxis, sharedMoves: fleet.last?.commonMode });
      return {
        row: toSpindleRow(standing),
        checks: checks.slice(0, SHOWN).map(toCheckRow),
        moreChecks: checks.length > SHOWN,
        events: serviceEvents(store.db, spindleId),
        trend,
        details: detailed.map(({ checkId, counter, seriesSN }) => ({ checkId, counter, scatterN: seriesSN })),
        stop: standing.stop,
        due: dueNow(store.db, works(), standing, forecastInFile(store.db, standing), now()),
      };
    },
    "spindles.fleet": () => fleet.view(),
  };
}
