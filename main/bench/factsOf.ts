import type { Works } from "../../app/ledger/register.ts";
import type { Db } from "../store/db.ts";
import { readAdapter } from "../store/records/adapters.ts";
import type { CheckSummary } from "../store/records/checkSummary.ts";
import { readCheck } from "../store/records/checks.ts";
import { readGauge } from "../store/records/gauges.ts";
import { foundOffOn } from "../store/records/proofs.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { DraftState } from "./DraftState.ts";
import type { EarlierCheck, FormFacts } from "./FormFacts.ts";

/** Gathers what the register, the earlier checks and the link say of what the series is tagged with. */
export function factsOf(
  db: Db,
  { tag, reason }: DraftState,
  more: { readonly works: Works; readonly resolutionN: number | undefined; readonly today: string },
): FormFacts {
  const standing = tag.spindleId === undefined ? undefined : readSpindle(db, tag.spindleId);
  const previous = earlier(db, standing?.last);
  // A check that is to become the baseline is not judged by the old one.
  const newBaseline = reason === "baseline" || (standing?.last !== undefined && standing.baseline === undefined);
  const gauge = tag.gaugeId === undefined ? undefined : readGauge(db, tag.gaugeId);
  return {
    works: more.works,
    spindle: standing?.spindle,
    adapter: tag.adapterId === undefined ? undefined : readAdapter(db, tag.adapterId),
    gauge,
    baseline: newBaseline ? undefined : earlier(db, standing?.baseline),
    previous: newBaseline ? undefined : previous,
    earlierScatter: scatterOf(previous),
    resolutionN: more.resolutionN ?? gauge?.resolutionN,
    gaugeFoundOff: foundOffOn(db, gauge) !== undefined,
    today: more.today,
  };
}

function earlier(db: Db, summary: CheckSummary | undefined): EarlierCheck | undefined {
  const filed = summary && readCheck(db, summary.checkId);
  return filed && { checkId: filed.summary.checkId, check: filed.check };
}

function scatterOf(previous: EarlierCheck | undefined): FormFacts["earlierScatter"] {
  const series = previous?.check.series;
  if (series?.sN == null || !(series.sN > 0) || series.n < 2) return undefined;
  return { sN: series.sN, degreesOfFreedom: series.n - 1 };
}
