import { AppError } from "../../app/contract/result.ts";
import type { ZeroView } from "../../app/contract/seriesViews.ts";
import type { Session } from "../link/Session.ts";

/** A steady second is wanted. */
const LEAST_REST_S = 1;

/**
 * The zero as the rest in progress gives it. The detector takes every true rest as a zero by itself; this says which one
 * stands, and refuses with the reason when there is none to take.
 */
export function zeroNow(session: Session | undefined): ZeroView {
  const live = session?.live;
  if (session === undefined || live === undefined) {
    throw new AppError("refused", "No gauge is being read. Connect it first.", { key: "zero.noGauge" });
  }
  if (live.word === "none") throw new AppError("refused", "No reading has come yet.", { key: "zero.noReading" });
  if (live.word === "held") {
    throw new AppError("refused", "This gauge shows its held maximum: clear it at the gauge itself.", {
      key: "zero.held",
    });
  }
  if (live.word !== "atRest") {
    throw new AppError(
      "refused",
      "The gauge is loaded or the force moves. Release it, let it lie still for a second, and press again.",
      { key: "zero.loaded" },
    );
  }
  const rest = session.restNow;
  if (rest === undefined || (rest.restedS !== undefined && rest.restedS < LEAST_REST_S)) {
    throw new AppError(
      "refused",
      "The reading is not steady for a second yet. Let the gauge lie still and press again.",
      { key: "zero.moving" },
    );
  }
  return { beforeN: live.zeroN, afterN: rest.indicationN };
}
