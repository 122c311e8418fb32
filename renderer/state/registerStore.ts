import { createStore } from "zustand/vanilla";
import type { ProofTableRow, ReferenceRow } from "../../app/contract/proofViews.ts";
import type { AdapterRow, FleetView, GaugeRow, OperatorView, SpindleRow } from "../../app/contract/recordViews.ts";
import type { StoredPlan } from "../../app/ledger/proof.ts";

/** The lists. Undefined: not asked for yet, or changed since and to be asked for again where it is shown. */
export type RegisterState = {
  readonly spindles: readonly SpindleRow[] | undefined;
  readonly adapters: readonly AdapterRow[] | undefined;
  readonly gauges: readonly GaugeRow[] | undefined;
  readonly operators: readonly OperatorView[] | undefined;
  readonly references: readonly ReferenceRow[] | undefined;
  readonly plans: readonly StoredPlan[] | undefined;
  readonly tables: readonly ProofTableRow[] | undefined;
  readonly fleet: FleetView | undefined;
  /** Rises when a list has gone stale: whoever shows one asks anew. */
  readonly stale: Readonly<Record<ListName, number>>;
};

export type ListName = "spindles" | "adapters" | "gauges" | "operators" | "references" | "plans" | "tables" | "fleet";

export const createRegisterStore = () =>
  createStore<RegisterState>(() => ({
    spindles: undefined,
    adapters: undefined,
    gauges: undefined,
    operators: undefined,
    references: undefined,
    plans: undefined,
    tables: undefined,
    fleet: undefined,
    stale: { spindles: 0, adapters: 0, gauges: 0, operators: 0, references: 0, plans: 0, tables: 0, fleet: 0 },
  }));

/** The rows with one of them exchanged or added. */
export function withRow<R>(rows: readonly R[] | undefined, row: R, idOf: (row: R) => string): readonly R[] | undefined {
  if (rows === undefined) return undefined;
  const at = rows.findIndex((other) => idOf(other) === idOf(row));
  return at === -1 ? [...rows, row] : rows.with(at, row);
}
