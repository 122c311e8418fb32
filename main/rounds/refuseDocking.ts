import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Works } from "../../app/ledger/register.ts";
import { freshRecords } from "../../app/round/memory/freshRecords.ts";
import type { Store } from "../store/Store.ts";
import type { DockingWork } from "./DockingWork.ts";
import { dockedReadings } from "./readDocking.ts";
import { dockingCount, dockingsOf, readRound } from "./roundRecords.ts";
import { toRoundView } from "./toRoundView.ts";

type Input = Parsed<"docking.accept">;
type Standing = { readonly store: Store; readonly works: Works };

/** Every reading is either filed once or left out with a reason; none is forgotten. */
export function refuseUnlessWhole(input: Input, { records }: DockingWork): void {
  const uses = new Int32Array(records.length);
  const all = [...input.filings.flatMap((f) => f.takes), ...input.leftOut.map((l) => l.take)];
  for (const at of all) if (at < uses.length) uses[at]! += 1;
  if (all.some((at) => at >= records.length) || uses.some((n) => n !== 1))
    throw new AppError(
      "invalid",
      "Each reading is to be filed once or left out. Look at what is left, and accept again.",
      { key: "takesNotWhole" },
    );
  const spindles = input.filings.map((f) => f.spindleId);
  if (new Set(spindles).size !== spindles.length)
    throw new AppError("invalid", "A spindle has two groups of readings. Put them together, or leave one out.", {
      key: "spindleTwice",
    });
}

/** Somebody may have docked the same memory on another page: it is looked at once more, by what stands in the ledger now. */
export function refuseIfDockedMeanwhile(input: Input, work: DockingWork, { store, works }: Standing): void {
  if (work.request.typed !== undefined) {
    refuseIfSheetTypedMeanwhile(input, work, { store, works });
    return;
  }
  if (dockingCount(store.db) === work.dockedBefore) return;
  const docked = dockingsOf(store.db, work.request.gaugeId ?? null);
  // Said to be new though it looks known: what another page has filed since can be told from it by nobody.
  const { allNew } = work.request;
  if (allNew || freshRecords(dockedReadings(docked), work.memory).fresh.length !== work.records.length)
    throw new AppError(
      "conflict",
      "Readings of this memory were filed meanwhile on another page. Look again: only what is new is shown. Nothing was filed twice.",
      { key: "dockedMeanwhile" },
    );
}

/** A sheet has no readings to know again: a stop that was open when it was typed and has its check now was filed by somebody else. */
function refuseIfSheetTypedMeanwhile(input: Input, { stops, request }: DockingWork, { store, works }: Standing): void {
  const round = request.roundId === undefined ? undefined : readRound(store.db, request.roundId);
  if (round === undefined) return;
  const now = new Map(toRoundView(store.db, round, works).stops.map((stop) => [stop.spindleId, stop.done]));
  const before = new Map(stops.map((stop) => [stop.spindleId, stop.done]));
  const twice = input.filings.find(
    ({ spindleId }) => before.get(spindleId) === undefined && now.get(spindleId) !== undefined,
  );
  if (twice !== undefined)
    throw new AppError(
      "conflict",
      "This sheet was filed meanwhile on another page. Look again: only what is new is shown. Nothing was filed twice.",
      { key: "dockedMeanwhile" },
    );
}
