import type { Proof } from "../../app/ledger/proof.ts";
import type { Gauge } from "../../app/ledger/register.ts";
import type { Db } from "../store/db.ts";
import { readGauge } from "../store/records/gauges.ts";
import type { Store } from "../store/Store.ts";

/** Files a proof and, where its curve is taken, the gauge that is corrected with it from here on: one transaction. */
export function appendProof(store: Store, proof: Proof, alsoInTransaction?: (db: Db) => void): void {
  const gauge = readGauge(store.db, proof.gaugeId) ?? proof.gauge;
  const { curve, on: provedOn, dueOn } = proof;
  const proved =
    proof.curveTaken && curve !== null
      ? { ...withoutDue(gauge), curve, provedOn, ...(dueOn === null ? {} : { dueOn }) }
      : undefined;
  store.append(
    [{ kind: "proof", body: proof }, ...(proved === undefined ? [] : [{ kind: "gauge" as const, body: proved }])],
    alsoInTransaction === undefined ? {} : { alsoInTransaction },
  );
}

function withoutDue({ dueOn: _dueOn, ...gauge }: Gauge): Gauge {
  return gauge;
}
