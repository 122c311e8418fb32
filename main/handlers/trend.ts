import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import { checkPage } from "../store/records/checks.ts";
import { serviceEvents } from "../store/records/serviceEvents.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Context } from "./Context.ts";
import { toCheckRow, toSpindleRow } from "./rows.ts";

const SHOWN = 100;

export function trendHandlers({ store }: Context): Pick<Handlers, "spindles.page" | "spindles.fleet"> {
  return {
    "spindles.page": ({ spindleId }) => {
      const standing = readSpindle(store.db, spindleId);
      if (standing === undefined)
        throw new AppError("notFound", "There is no such spindle in this data file.", { key: "noSpindle" });
      const checks = checkPage(store.db, spindleId, SHOWN + 1);
      return {
        row: toSpindleRow(standing),
        checks: checks.slice(0, SHOWN).map(toCheckRow),
        moreChecks: checks.length > SHOWN,
        events: serviceEvents(store.db, spindleId),
        trend: undefined as never,
        stop: standing.stop,
      };
    },
    "spindles.fleet": () => ({ rows: [], commonMode: [] }),
  };
}
