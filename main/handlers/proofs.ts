import type { Handlers } from "../../app/contract/methods.ts";
import type { proofs } from "../../app/contract/proofs.ts";
import type { ProofPage } from "../../app/contract/proofViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Adapter, Gauge } from "../../app/ledger/register.ts";
import { scaleChange } from "../../app/proof/after/scaleChange.ts";
import { isRefused } from "../../app/proof/method/ProofOptions.ts";
import { presetPlan, proofMethods } from "../../app/proof/plan/ProofPlan.ts";
import { adapterFactorOf, noAdapter } from "../proofs/adapterFactorOf.ts";
import { fileProof } from "../proofs/fileProof.ts";
import { outcomeOf } from "../proofs/outcomeOf.ts";
import type { ProofDesk } from "../proofs/ProofDesk.ts";
import { proofTables, tableRows, tableSetting } from "../proofs/proofTables.ts";
import { gaugeProofs, proofPage } from "../proofs/proofViews.ts";
import { checkedPlan } from "../proofs/savePlan.ts";
import { checkedReference, toReferenceRow } from "../proofs/saveReference.ts";
import { worksDay } from "../rounds/worksDay.ts";
import { readAdapter } from "../store/records/adapters.ts";
import { checkCountsByTool, readGauge } from "../store/records/gauges.ts";
import { proofsOf, readProof } from "../store/records/proofs.ts";
import { planList, referenceList } from "../store/records/references.ts";
import type { Context } from "./Context.ts";
import { readSettings } from "./program.ts";
import { toAdapterRow } from "./rows.ts";

type Part = Pick<Handlers, keyof typeof proofs>;
type Desk = { readonly desk: ProofDesk };

/** References, plans, the proof in work, and what was filed of proofs. */
export function proofHandlers(context: Context & Desk): Part {
  return { ...groundHandlers(context), ...deskHandlers(context), ...filedHandlers(context) };
}

const todayOf = ({ now, works }: Context) => worksDay(now(), works().timeZone);

type Ground = "references.list" | "references.save" | "plans.list" | "plans.presets" | "plans.save";

/** What proofs stand on. */
function groundHandlers(context: Context): Pick<Part, Ground> {
  const { store, hub } = context;
  return {
    "references.list": () => referenceList(store.db).map((r) => toReferenceRow(r, todayOf(context))),
    "references.save": (input) => {
      const body = checkedReference(input, input.referenceId ?? store.newId());
      store.append([{ kind: "reference", body }]);
      hub.say("proofs.changed", { what: "references", gaugeId: undefined });
      return toReferenceRow(body, todayOf(context));
    },
    "plans.list": () => planList(store.db),
    "plans.presets": ({ capacityN }) => proofMethods.map((method) => presetPlan(method, capacityN)),
    "plans.save": (input) => {
      const body = checkedPlan(input, planList(store.db), input.planId ?? store.newId());
      store.append([{ kind: "plan", body }]);
      hub.say("proofs.changed", { what: "plans", gaugeId: undefined });
      return body;
    },
  };
}

type OnDesk = Extract<keyof Part, `proof.${string}`>;

/** The proof in work. */
function deskHandlers(context: Context & Desk): Pick<Part, OnDesk> {
  const { store, hub, desk } = context;
  const page = (proofId: string): ProofPage => {
    const found = proofPage(store.db, proofId, readSettings(context).initials);
    if (found === undefined) throw noProof();
    return found;
  };
  return {
    "proof.start": (input) => desk.start(input),
    "proof.state": () => ({ proof: desk.view }),
    "proof.describe": (input) => desk.describe(input),
    "proof.confirm": (input) => desk.confirm(input),
    "proof.take": (input) => desk.take(input),
    "proof.type": (input) => desk.type(input),
    "proof.repeat": (input) => desk.repeat(input),
    "proof.skip": (input) => desk.skip(input),
    "proof.putDown": (input) => desk.putDown(input),
    "proof.resume": (input) => desk.resume(input),
    "proof.discard": async (input) => {
      await desk.discard(input);
      return { done: true };
    },
    "proof.openReference": (input) => desk.openReference(input),
    "proof.closeReference": (input) => desk.closeReference(input),
    "proof.result": ({ proofId }) => {
      const draft = desk.mine(proofId);
      const { curve: _, ...outcome } = outcomeOf(
        draft,
        proofsOf(store.db, draft.gauge.gaugeId),
        todayOf(context),
        proofTables(store.db),
      );
      return outcome;
    },
    "proof.file": async (input) => {
      if (readProof(store.db, input.proofId) !== undefined) return page(input.proofId);
      const draft = desk.mine(input.proofId);
      const { now, version } = context;
      fileProof(draft, input, { store, now, version, today: () => todayOf(context) });
      await desk.ended();
      hub.say("proofs.changed", { what: "proofs", gaugeId: draft.gauge.gaugeId });
      gaugesChanged(context);
      return page(input.proofId);
    },
  };
}

/** What was filed, and what follows from it. */
function filedHandlers(context: Context): Omit<Part, Ground | OnDesk> {
  const { store, hub, jobs } = context;
  return {
    "adjustments.save": ({ gaugeId, what, asFoundProofId, operatorId }) => {
      const gauge = readGauge(store.db, gaugeId);
      if (gauge === undefined)
        throw new AppError("notFound", "There is no such gauge in this data file.", { key: "proof.no.gauge" });
      const ms = context.now();
      const body = {
        adjustmentId: store.newId(),
        gaugeId,
        at: new Date(ms).toISOString(),
        offsetMinutes: 0 - new Date(ms).getTimezoneOffset(),
        what,
        asFoundProofId: asFoundProofId ?? null,
        operatorId: operatorId ?? null,
      };
      // What was proved before is no longer true of it: until it is proved as left, its readings stand uncorrected.
      const { curve: _curve, provedOn: _provedOn, dueOn: _dueOn, ...unproved } = gauge satisfies Gauge;
      store.append([
        { kind: "adjustment", body },
        { kind: "gauge", body: unproved },
      ]);
      hub.say("proofs.changed", { what: "adjustments", gaugeId });
      gaugesChanged(context);
      return body;
    },
    "proofs.tables": () => tableRows(store.db),
    "proofs.saveTable": ({ table, value }) => {
      store.append([tableSetting(table, value)]);
      hub.say("proofs.changed", { what: "tables", gaugeId: undefined });
      return { done: true };
    },
    "proofs.list": ({ gaugeId }) => gaugeProofs(store.db, gaugeId),
    "proofs.get": ({ proofId }) => {
      const found = proofPage(store.db, proofId, readSettings(context).initials);
      if (found === undefined) throw noProof();
      return found;
    },
    "proofs.affected": async (doubt) => {
      const view = await jobs.run("affected", doubt);
      if (view === undefined) throw "proofId" in doubt ? noProof() : noAdapter();
      return view;
    },
    "proofs.markRemeasure": ({ checkIds, reason, operatorId }) => {
      const marked = [...new Set(checkIds)];
      store.append([{ kind: "remeasureMark", body: { checkIds: marked, reason, operatorId: operatorId ?? null } }]);
      hub.say("proofs.changed", { what: "marks", gaugeId: undefined });
      return { marked: marked.length };
    },
    "adapters.factor": (input) => {
      const adapter = readAdapter(store.db, input.adapterId);
      if (adapter === undefined) throw noAdapter();
      const factor = adapterFactorOf(store.db, input);
      const none = {
        factor: undefined,
        refused: undefined,
        refusedWhy: undefined,
        change: undefined,
        filed: undefined,
      };
      if (isRefused(factor)) return { ...none, refused: factor.refused, refusedWhy: factor.why };
      const { assumed, version } = adapter;
      const had = { scale: adapter.scale, relative: adapter.scaleUncertainty };
      const change = assumed ? undefined : { ...scaleChange(had, factor), scale: adapter.scale, version };
      if (!input.file) return { ...none, factor, change };
      if (!(factor.relative > 0))
        throw new AppError(
          "invalid",
          "These readings leave no doubt at all about the scale: nothing is known so well. Type more runs, or the reference's uncertainty.",
          {
            key: "proof.noDoubt",
            field: "referenceRelative",
          },
        );
      const { dueOn: _old, ...rest } = adapter;
      const body: Adapter = {
        ...rest,
        scale: factor.scale,
        scaleUncertainty: factor.relative,
        assumed: false,
        version: adapter.version + 1,
        calibratedOn: todayOf(context),
        ...(input.dueOn === undefined ? {} : { dueOn: input.dueOn }),
      };
      store.append([{ kind: "adapter", body }]);
      hub.say("register.changed", { what: "adapters" });
      context.series.refresh();
      const filed = toAdapterRow(body, checkCountsByTool(store.db).get(body.adapterId) ?? 0, todayOf(context));
      return { ...none, factor, change, filed };
    },
  };
}

function gaugesChanged({ hub, series }: Context): void {
  hub.say("register.changed", { what: "gauges" });
  series.refresh(); // the series in work is corrected with today's curve
}

const noProof = () => new AppError("notFound", "There is no such proof in this data file.", { key: "noProof" });
