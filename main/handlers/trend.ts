import type { Handlers } from "../../app/contract/methods.ts";
import type { FleetView } from "../../app/contract/recordViews.ts";
import { AppError } from "../../app/contract/result.ts";
import { trendOf } from "../../app/trend/trendOf.ts";
import { detailOf, historyOf } from "../fleet/historyOf.ts";
import { checkPage, readCheck } from "../store/records/checks.ts";
import { historyRows } from "../store/records/histories.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { toCheckRow, toSpindleRow } from "./rows.ts";

/** Checks a page shows at once; the rest comes by `checks.list`. */
const SHOWN = 100;
/** Of so many last checks the inside is looked at too, for scatter and creep: each is a body to unpack. */
const DETAILED = 120;

/** Where each spindle is going, and the order in which to look after all. */
export function trendHandlers(context: Context): Pick<Handlers, "spindles.page" | "spindles.fleet"> {
  const { store, jobs } = context;
  let cached: { readonly place: number; readonly view: Promise<FleetView> } | undefined;
  let moves: FleetView["commonMode"] | undefined;

  /** Worked out anew only when something was filed since. */
  const fleet = (): Promise<FleetView> => {
    const place = store.lastPlace();
    if (cached?.place !== place) {
      const view = jobs.run("fleet", {});
      cached = { place, view };
      view.then(
        (found) => {
          moves = found.commonMode;
        },
        () => {
          cached = undefined; // the next page tries again
        },
      );
    }
    return cached.view;
  };

  return {
    "spindles.page": ({ spindleId, xAxis }) => {
      const standing = readSpindle(store.db, spindleId);
      if (standing === undefined) {
        throw new AppError("notFound", "There is no such spindle in this data file.", { key: "noSpindle" });
      }
      const checks = checkPage(store.db, spindleId, SHOWN + 1);
      const events = serviceEvents(store.db, spindleId);
      const rows = historyRows(store.db, spindleId);
      const history = historyOf(spindleId, standing.spindle.limits, rows, events);
      const from = rows.length - DETAILED;
      const points = history.points.map((point, i) => {
        const filed = i < from ? undefined : readCheck(store.db, point.checkId);
        return filed === undefined ? point : { ...point, ...detailOf(filed.check) };
      });
      return {
        row: toSpindleRow(standing),
        checks: checks.slice(0, SHOWN).map(toCheckRow),
        moreChecks: checks.length > SHOWN,
        events,
        trend: trendOf({ ...history, points }, { xAxis, sharedMoves: moves }),
        details: points.slice(Math.max(0, from)).map(({ checkId, counter, seriesSN }) => ({
          checkId,
          counter,
          scatterN: seriesSN,
        })),
        stop: standing.stop,
      };
    },
    "spindles.fleet": fleet,
  };
}
