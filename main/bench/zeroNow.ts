import { AppError } from "../../app/contract/result.ts";
import type { ZeroView } from "../../app/contract/seriesViews.ts";
import type { ZeroRefusal } from "../../app/cycle/phase/steadyZero.ts";
import type { Session } from "../link/Session.ts";

/** Takes the last steady second as the zero; the spool notes it, so that a replay takes the same. */
export function zeroNow(session: Session | undefined): ZeroView {
  const beforeN = session?.live?.zeroN;
  const outcome = session?.takeZero();
  if (outcome === undefined) {
    throw new AppError("refused", "No gauge is being read. Connect it first.", { key: "zero.noGauge" });
  }
  if (outcome.kind === "taken") return { beforeN, afterN: outcome.zeroN };
  throw new AppError("refused", words[outcome.reason], { key: `zero.${outcome.reason}` });
}

const words: Readonly<Record<ZeroRefusal, string>> = {
  noReadings: "There is not a second of readings yet. Let the gauge lie still and press again.",
  moving: "The reading is not steady. Let the gauge lie still for a second and press again.",
  loaded: "The gauge is loaded. Release it, let it lie still for a second, and press again.",
  overload: "The gauge says overload. Take the load off it first, and have it proved before it is used again.",
  held: "This gauge shows its held maximum: clear it at the gauge itself.",
};
