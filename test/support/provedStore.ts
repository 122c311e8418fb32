import type { Proof } from "../../app/ledger/proof.ts";
import type { Store } from "../../main/store/Store.ts";
import { idOf } from "./aCheck.ts";
import { aProof } from "./aProof.ts";
import { storeInTemp } from "./storeInTemp.ts";

/** A data file with a gauge's proofs: the year before, and this year as found, adjusted, and as left. */
export function provedStore(change: (asLeft: Proof) => Proof = (proof) => proof): {
  readonly store: Store;
  readonly found: Proof;
  readonly left: Proof;
} {
  const store = storeInTemp();
  const adjustmentId = idOf(8_001);
  const before = aProof({ seed: 1, on: "2025-03-02" });
  const found = aProof({ seed: 2, on: "2026-03-02", gain: 1.008 });
  const left = change({ ...aProof({ seed: 3, on: "2026-03-02", as: "left" }), adjustmentId });
  const adjustment = {
    adjustmentId,
    gaugeId: found.gaugeId,
    at: "2026-03-02T10:10:00.000Z",
    offsetMinutes: 60,
    what: "span turned down by half a turn",
    asFoundProofId: found.proofId,
    operatorId: null,
  };
  store.append([
    { kind: "gauge", body: found.gauge },
    { kind: "proof", body: before },
    { kind: "proof", body: found },
    { kind: "adjustment", body: adjustment },
    { kind: "proof", body: left },
  ]);
  return { store, found, left };
}
