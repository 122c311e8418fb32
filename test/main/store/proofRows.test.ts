import { describe, expect, it } from "vitest";
import { DamageList } from "../../../main/store/ledger/DamageList.ts";
import { compareProjections } from "../../../main/store/projections/compareProjections.ts";
import { rebuildProjections } from "../../../main/store/projections/rebuildProjections.ts";
import { clearProofDraft, loadProofDraft, saveProofDraft } from "../../../main/store/proofDraft.ts";
import { proofsOf, readProof } from "../../../main/store/records/proofs.ts";
import { adjustmentsOf, planList, referenceList } from "../../../main/store/records/references.ts";
import type { Store } from "../../../main/store/Store.ts";
import { idOf } from "../../support/aCheck.ts";
import { aProof } from "../../support/aProof.ts";
import { storeInTemp } from "../../support/storeInTemp.ts";

function differences(store: Store): string[] {
  const damage = new DamageList();
  compareProjections(store.db, damage, { progress: () => {}, goOn: () => {} });
  return damage.kept.map((d) => d.detail);
}

const adjustment = (n: number, day: string, gaugeId: string) => ({
  kind: "adjustment" as const,
  body: {
    adjustmentId: idOf(n),
    gaugeId,
    at: `${day}T08:00:00.000Z`,
    offsetMinutes: 60,
    what: "span set",
    asFoundProofId: null,
    operatorId: null,
  },
});

describe("tables made of proofs", () => {
  const gaugeId = idOf(30);
  const first = aProof({ seed: 1, gaugeId, on: "2026-03-02" });
  const second = aProof({ seed: 2, gaugeId, on: "2025-03-02" });
  const others = aProof({ seed: 3, gaugeId: idOf(31), on: "2026-01-01" });

  it("are the same when they are made anew from the ledger, and find a gauge's proofs by day", () => {
    const store = storeInTemp();
    const { plan } = first;
    store.append([
      { kind: "reference", body: first.reference },
      { kind: "plan", body: { ...plan, planId: idOf(40), state: "inUse" } },
      { kind: "proof", body: first },
      { kind: "proof", body: others },
      { kind: "proof", body: second },
      adjustment(50, "2026-03-03", gaugeId),
      adjustment(51, "2026-03-01", gaugeId),
      adjustment(52, "2026-03-02", idOf(31)),
    ]);
    expect(differences(store)).toEqual([]);
    expect(proofsOf(store.db, gaugeId).map((p) => p.proof.proofId)).toEqual([second.proofId, first.proofId]);
    expect(readProof(store.db, others.proofId)?.proof).toEqual(others);
    expect(readProof(store.db, idOf(99))).toBeUndefined();
    expect(adjustmentsOf(store.db, gaugeId).map((a) => a.at.slice(8, 10))).toEqual(["01", "03"]);
    expect([referenceList(store.db).length, planList(store.db).length]).toEqual([1, 1]);
    store.db.exec(`UPDATE proof_row SET gauge_id = '${idOf(77)}' WHERE proof_id = '${first.proofId}'`);
    expect(differences(store)).toEqual([`proof_row ${first.proofId}: not what the ledger says`]);
    rebuildProjections(store);
    expect(differences(store)).toEqual([]);
  });

  it("let the proof in work be kept and thrown away beside the chain", () => {
    const store = storeInTemp();
    expect(loadProofDraft(store.db)).toBeUndefined();
    store.write((db) => saveProofDraft(db, { proofId: "a" }, 1));
    store.write((db) => saveProofDraft(db, { proofId: "b" }, 2));
    expect(loadProofDraft(store.db)).toEqual({ proofId: "b" });
    store.append([{ kind: "proof", body: first }], { alsoInTransaction: clearProofDraft });
    expect(loadProofDraft(store.db)).toBeUndefined();
  });
});
