import type { RoundView, StopView } from "../../../app/contract/roundViews.ts";
import type { Works } from "../../../app/ledger/register.ts";
import { type ForceUnit, forceUnits } from "../../../app/quantity/forceUnits.ts";
import type { Language } from "../../../app/words/Language.ts";
import { adapterList } from "../../store/records/adapters.ts";
import { readGauge } from "../../store/records/gauges.ts";
import type { Store } from "../../store/Store.ts";
import { initials } from "../records/correctionsOf.ts";

/** What a round's sheet and table say beside the round itself. */
export type SheetFacts = {
  readonly round: RoundView;
  readonly worksName: string;
  readonly unit: ForceUnit;
  readonly gaugeName: string | undefined;
  /** By initials, as on every paper. */
  readonly operator: string | undefined;
  readonly adapterName: (stop: StopView) => string | undefined;
  /** Adapters to take along, in the order they are needed. */
  readonly adapters: readonly string[];
  /** Tapers of the round that no adapter in use fits for sure. */
  readonly withoutAdapter: readonly string[];
};

export function sheetFacts(store: Store, round: RoundView, works: Works, language: Language): SheetFacts {
  const names = new Map(adapterList(store.db).map((a) => [a.adapterId, a.name]));
  const adapterName = (stop: StopView) => (stop.adapterId === undefined ? undefined : names.get(stop.adapterId));
  const stops = round.stops.filter((s) => !s.retired);
  return {
    round: { ...round, stops },
    worksName: works.name,
    unit: forceUnits.find((u) => u === works.unitShown) ?? "kN",
    gaugeName: round.gaugeId === undefined ? undefined : readGauge(store.db, round.gaugeId)?.name,
    operator: initials(store.db, round.operatorId, { language }),
    adapterName,
    adapters: [...new Set(stops.flatMap((s) => adapterName(s) ?? []))],
    withoutAdapter: [...new Set(stops.filter((s) => adapterName(s) === undefined).map((s) => s.taper))],
  };
}
