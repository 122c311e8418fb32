import type { Handlers } from "../../../app/contract/methods.ts";
import { proofs } from "../../../app/contract/proofs.ts";
import { AppError } from "../../../app/contract/result.ts";
import { adapterFactor } from "../../../app/proof/after/adapterFactor.ts";
import { scaleChange } from "../../../app/proof/after/scaleChange.ts";
import { proofActs } from "../../../app/proof/plan/proofActs.ts";
import { confirmAct, putDown, repeatAct, skipAct, takeReading, takeUp } from "../../../app/proof/plan/proofSteps.ts";
import { astmE74Table, readAstmE74Table } from "../../../app/proof/tables/astmE74Table.ts";
import { iso376Table, readIso376Table } from "../../../app/proof/tables/iso376Table.ts";
import { tableSetting } from "../../../main/proofs/proofTables.ts";
import { checkedPlan } from "../../../main/proofs/savePlan.ts";
import { checkedReference, toReferenceRow } from "../../../main/proofs/saveReference.ts";
import { described } from "../../../main/proofs/startProof.ts";
import { typedForce } from "../../../main/proofs/typedForce.ts";
import type { FakeState } from "../fakeCore.ts";
import { idsFrom } from "./fakeId.ts";

type Part = Pick<Handlers, keyof typeof proofs>;
const AT = "2026-11-16T09:00:00.000Z";

/** Proofs of the fake core: what is typed is taken, what is read live is a little over the target. */
export function proofHandlers(state: FakeState): Part {
  const newId = idsFrom(80_000);
  const fake = state.proofs;
  const said = (proof = fake.draft === undefined ? undefined : fake.view()) => {
    state.say("proof.changed", { proof });
    return fake.view();
  };
  const planned = () => fake.inWork().planned;
  const taking = (index: number, indicationN: number) => {
    const act = proofActs(planned().plan)[index];
    const targetN = act?.kind === "read" ? act.targetN : 0;
    return { referenceN: targetN, referenceStandardN: 2e-4 * targetN, indicationN, n: 10, steady: true };
  };
  const none = (): never => {
    throw new AppError("refused", "The fake core cannot do this.");
  };
  const some = {
    "references.list": () => fake.references.map((one) => toReferenceRow(one, fake.today)),
    "references.save": (input) => {
      const reference = checkedReference(input, input.referenceId ?? newId());
      fake.references = [...fake.references.filter((one) => one.referenceId !== reference.referenceId), reference];
      state.say("proofs.changed", { what: "references", gaugeId: undefined });
      return toReferenceRow(reference, fake.today);
    },
    "plans.list": () => fake.plans,
    "plans.save": (input) => {
      const plan = checkedPlan(input, fake.plans, input.planId ?? newId());
      fake.plans = [...fake.plans.filter((one) => one.planId !== plan.planId), plan];
      state.say("proofs.changed", { what: "plans", gaugeId: undefined });
      return plan;
    },
    "proof.state": () => ({ proof: fake.draft === undefined ? undefined : fake.view() }),
    "proof.start": (input) => {
      const gauge = state.gauges.find((row) => row.gauge.gaugeId === input.gaugeId)!.gauge;
      fake.begin(input, gauge, newId(), state.nowMs());
      return said();
    },
    "proof.describe": (input) => {
      fake.draft = { ...fake.inWork(), ...described(fake.inWork(), input) };
      return said();
    },
    "proof.confirm": ({ index }) => said(fake.step(confirmAct(planned(), index, AT))),
    "proof.take": ({ index }) => {
      const { referenceN } = taking(index, 0);
      return said(fake.step(takeReading(planned(), index, taking(index, referenceN * 1.001 + 2), AT)));
    },
    "proof.type": ({ index, indication }) => {
      const { forceN } = typedForce(indication, "kN", "indication");
      return said(fake.step(takeReading(planned(), index, taking(index, forceN), AT)));
    },
    "proof.repeat": ({ index, reason }) => said(fake.step(repeatAct(planned(), index, reason, AT))),
    "proof.skip": ({ index, reason }) => said(fake.step(skipAct(planned(), index, reason, AT))),
    "proof.putDown": ({ reason }) => said(fake.step(putDown(planned(), reason, AT))),
    "proof.resume": ({ from }) => said(fake.step(takeUp(planned(), from, AT))),
    "proof.discard": () => {
      fake.draft = undefined;
      return { done: true };
    },
    "proof.result": () => fake.outcome(),
    "proof.file": (input) => fake.file(input),
    "proofs.tables": () => [
      { table: "iso376", value: fake.tables.iso376 ?? iso376Table, own: fake.tables.iso376 !== undefined },
      { table: "astmE74", value: fake.tables.astmE74 ?? astmE74Table, own: fake.tables.astmE74 !== undefined },
    ],
    "proofs.saveTable": ({ table, value }) => {
      tableSetting(table, value); // refuses what is no such table
      fake.tables = {
        ...fake.tables,
        ...(table === "iso376"
          ? { iso376: value === null ? undefined : readIso376Table(value) }
          : { astmE74: value === null ? undefined : readAstmE74Table(value) }),
      };
      state.say("proofs.changed", { what: "tables", gaugeId: undefined });
      return { done: true };
    },
    "proofs.list": ({ gaugeId }) => fake.list(gaugeId),
    "proofs.get": ({ proofId }) => fake.page(proofId),
    "proofs.affected": () => fake.affected,
    "proofs.markRemeasure": ({ checkIds }) => {
      fake.marked.push(...checkIds);
      return { marked: checkIds.length };
    },
    "adjustments.save": ({ gaugeId, what, asFoundProofId }) => {
      const adjustment = {
        adjustmentId: newId(),
        gaugeId,
        at: AT,
        offsetMinutes: 60,
        what,
        asFoundProofId: asFoundProofId ?? null,
        operatorId: null,
      };
      fake.adjustments = [...fake.adjustments, adjustment];
      state.say("proofs.changed", { what: "adjustments", gaugeId });
      return adjustment;
    },
    "adapters.factor": ({ from }) => {
      if (!("pairs" in from)) return none();
      const figures = ({ referenceN, netN }: { referenceN: number; netN: number }) => ({
        reference: referenceN,
        net: netN,
      });
      const factor = adapterFactor(
        from.pairs.map(({ run, without, withIt }) => ({ run, without: figures(without), withIt: figures(withIt) })),
      );
      return "refused" in factor
        ? { factor: undefined, refused: factor.refused, refusedWhy: factor.why, change: undefined, filed: undefined }
        : {
            factor,
            refused: undefined,
            refusedWhy: undefined,
            change: { ...scaleChange({ scale: 1.004, relative: 0.001 }, factor), scale: 1.004, version: 2 },
            filed: undefined,
          };
    },
  } satisfies Partial<Part>;
  return { ...(Object.fromEntries(Object.keys(proofs).map((name) => [name, none])) as unknown as Part), ...some }; // one for each name of the list
}
