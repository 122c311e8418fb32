import type { Output, Parsed } from "../../app/contract/methods.ts";
import type { CheckRow } from "../../app/contract/recordViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Works } from "../../app/ledger/register.ts";
import { toCheckRow, toSpindleRow } from "../handlers/rows.ts";
import type { PushHub } from "../host/PushHub.ts";
import type { RoundLead } from "../rounds/RoundLead.ts";
import { clearDraft } from "../store/draft.ts";
import { checkSummary } from "../store/records/checks.ts";
import { readSpindle } from "../store/records/spindles.ts";
import type { Store } from "../store/Store.ts";
import type { Bench } from "./Bench.ts";
import { checkOf } from "./checkOf.ts";
import type { FormFacts } from "./FormFacts.ts";
import type { Series } from "./Series.ts";
import type { Undo } from "./Undo.ts";

export type AcceptDeps = {
  readonly store: Store;
  readonly series: Series;
  readonly bench: Bench;
  readonly facts: () => FormFacts;
  readonly works: () => Works;
  readonly now: () => number;
  readonly version: string;
  readonly undo: Undo;
  readonly hub: PushHub;
  readonly lead: RoundLead;
};

type Accepted = { readonly row: CheckRow; readonly again: boolean };

/** Files, tells all pages, and begins the next series; two calls for one series at the same time share one filing. */
export function acceptor(deps: AcceptDeps): (input: Parsed<"series.accept">) => Promise<Output<"series.accept">> {
  const { series, bench, store, undo, hub } = deps;
  const underWay = new Map<string, Promise<Accepted>>();
  return async (input) => {
    const first = !underWay.has(input.seriesId);
    const filing = underWay.get(input.seriesId) ?? accept(input, deps).finally(() => underWay.delete(input.seriesId));
    underWay.set(input.seriesId, filing);
    const { row, again } = await filing;
    if (again || !first) return { row, again: true, draft: series.view };
    bench.noteFiled(series.state);
    const undoUntilMs = undo.filed(row.checkId);
    const draft = series.begin(series.state.tag, deps.lead.after());
    bench.followInto(series);
    deps.lead.tell();
    hub.say("check.filed", { row, spindle: toSpindleRow(readSpindle(store.db, row.spindleId)!), undoUntilMs }); // just filed
    return { row, again: false, draft };
  };
}

/**
 * Files the series in work: one ledger entry, its projections and its waveforms in one transaction with one disk sync. The
 * series' id is the check's id, so a second call, from whichever page, finds the check already filed.
 * @throws AppError  `conflict` when the tag changed since the page looked, `refused` with what stands in the way
 */
async function accept(input: Parsed<"series.accept">, deps: AcceptDeps): Promise<Accepted> {
  const already = filed(input.seriesId, deps.store);
  if (already !== undefined) return { row: already, again: true };
  const waveforms = await deps.series.waveforms();
  // Another page may have filed it while the waveforms were packed.
  const meanwhile = filed(input.seriesId, deps.store);
  if (meanwhile !== undefined) return { row: meanwhile, again: true };
  refuseUnless(input, deps);
  const { store, series, bench, now } = deps;
  const status = bench.session?.status();
  const measuredAtMs = now();
  const state = { ...series.state, roundId: deps.lead.roundOfCheck()?.roundId };
  const check = checkOf(state, series.formed, deps.facts(), {
    measuredAtMs,
    offsetMinutes: -new Date(measuredAtMs).getTimezoneOffset(),
    source: series.state.typed === undefined ? "measured" : "typed",
    unit: status?.unit ?? deps.works().unitShown,
    rateHz: status?.rateHz,
    patternId: bench.patternId,
    pattern: status?.pattern,
    waveformHashes: new Map(waveforms.map((w) => [w.cycleId, w.hash])),
    programVersion: deps.version,
    clockDoubtful: input.clockConfirmed === true && isClockBehind(deps),
  });
  store.append([{ kind: "check", body: check }, ...deps.lead.closing(check.spindleId)], {
    waveforms,
    alsoInTransaction: clearDraft,
  });
  return { row: filed(input.seriesId, store)!, again: false }; // it was just filed
}

function filed(seriesId: string, store: Store): CheckRow | undefined {
  const summary = checkSummary(store.db, seriesId);
  return summary && toCheckRow(summary);
}

function refuseUnless(input: Parsed<"series.accept">, deps: AcceptDeps): void {
  const { state, formed } = deps.series;
  if (input.seriesId !== state.seriesId) {
    throw new AppError(
      "conflict",
      "This series was filed or cleared on another page meanwhile. Look at what is shown now.",
      { key: "seriesGone" },
    );
  }
  if (input.spindleId !== state.tag.spindleId) {
    throw new AppError(
      "conflict",
      "The spindle in the tag was changed on another page. Nothing was filed: look at the tag and accept again.",
      { key: "tagChanged" },
    );
  }
  if (deps.store.refusal !== undefined) throw new AppError("readOnly", deps.store.refusal.message, { key: "readOnly" });
  if (formed.cannotFile !== undefined)
    throw new AppError("refused", words[formed.cannotFile], { key: `cannotFile.${formed.cannotFile}` });
  if (isClockBehind(deps) && input.clockConfirmed !== true) {
    throw new AppError(
      "refused",
      "The clock of this PC stands before the last entry in the records. Set it right, or say that it is right and accept again.",
      { key: "clockBehind" },
    );
  }
}

function isClockBehind({ store, now }: AcceptDeps): boolean {
  const last = store.lastEntryAtMs();
  return last !== undefined && now() < last;
}

const words = {
  nothingMeasured: "Nothing has been measured yet. Clamp at least once, or type the value in.",
  noSpindle: "Choose the spindle first.",
  noGauge: "Choose the gauge first.",
  blocked: "This series must not be filed as it is tagged: see the warning.",
  reasonWanted: "A warning wants a reason before this is filed.",
  readOnly: "The data file cannot be written.",
} as const;
