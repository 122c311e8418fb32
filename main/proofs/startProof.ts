import type { Parsed } from "../../app/contract/methods.ts";
import type { ProofAbout } from "../../app/contract/proofViews.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Proof, Reference } from "../../app/ledger/proof.ts";
import { planProblems } from "../../app/proof/plan/planProblems.ts";
import { tolerance } from "../../app/proof/plan/proofSteps.ts";
import type { Db } from "../store/db.ts";
import { readAdapter } from "../store/records/adapters.ts";
import { readGauge } from "../store/records/gauges.ts";
import { readReference } from "../store/records/references.ts";
import { readWorks } from "../store/records/works.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { planRefused } from "./refusals.ts";
import { hangFor } from "./weights.ts";

type Said = Pick<
  Parsed<"proof.describe">,
  "customer" | "workOrder" | "edition" | "accreditation" | "note" | "conditions" | "choices"
>;

const unknown: ProofAbout = {
  customer: undefined,
  workOrder: undefined,
  edition: undefined,
  accreditation: undefined,
  note: "",
  conditions: { temperatureC: null, temperatureRangeK: null, pressurePa: null, humidity: null },
  choices: { degree: null, mpe: null, rule: null, resolutionN: null, perKelvin: null },
};

/** What was said replaces what stood; null takes it back, what is left out stays. */
function aboutWith(said: Said, old: ProofAbout = unknown): ProofAbout {
  const text = (value: string | null | undefined, before: string | undefined) =>
    value === undefined ? before : (value ?? undefined);
  return {
    customer: text(said.customer, old.customer),
    workOrder: text(said.workOrder, old.workOrder),
    edition: text(said.edition, old.edition),
    accreditation: text(said.accreditation, old.accreditation),
    note: said.note ?? old.note,
    conditions: { ...old.conditions, ...given(said.conditions) },
    choices: { ...old.choices, ...given(said.choices) },
  };
}

/** What `proof.describe` changes of a proof in work. */
export function described(
  draft: ProofDraft,
  { operatorId, auto, ...said }: Parsed<"proof.describe">,
): Partial<ProofDraft> {
  return {
    operatorId: operatorId === undefined ? draft.operatorId : (operatorId ?? undefined),
    auto: auto ?? draft.auto,
    about: aboutWith(said, draft.about),
  };
}

function given<T extends object>(part: Partial<T> | undefined): Partial<T> {
  // Only what was said: an undefined member must not wipe out what stood.
  return Object.fromEntries(Object.entries(part ?? {}).filter(([, value]) => value !== undefined)) as Partial<T>;
}

/**
 * A new proof of what the register says today.
 * @throws AppError  a record that is not there or retired, or a plan that cannot be begun
 */
export function startProof(
  db: Db,
  input: Parsed<"proof.start">,
  at: { readonly proofId: string; readonly nowMs: number; readonly today: string },
): ProofDraft {
  const gauge = inUse(readGauge(db, input.gaugeId), "gauge");
  const adapter = input.adapterId == null ? undefined : inUse(readAdapter(db, input.adapterId), "adapter");
  const reference = inUse(readReference(db, input.referenceId), "reference");
  const { transducer } = reference;
  const problems = [
    ...planProblems(input.plan, gauge.capacityN, transducer, at.today),
    ...typedProblems(reference, input.plan.loadsN, at.today),
    ...rigProblems(reference, input),
  ];
  const refused = planRefused(problems);
  if (refused !== undefined) throw refused;
  return {
    proofId: at.proofId,
    as: input.as,
    gauge,
    adapter,
    reference,
    operatorId: input.operatorId ?? undefined,
    gaugeRead: input.gaugeRead,
    referenceRead: howRead(reference, input),
    auto: input.auto ?? false,
    about: aboutWith(input, { ...unknown, accreditation: readWorks(db)?.accreditation }),
    startedAtMs: at.nowMs,
    planned: { plan: input.plan, gaugeCapacityN: gauge.capacityN, events: [] },
    problems,
    unit: undefined,
    offset: null satisfies Proof["offset"],
  };
}

/** Typed reference values may have a capacity and a due date of their own. */
function typedProblems({ typed }: Reference, loadsN: readonly number[], today: string): ProofDraft["problems"] {
  const over = loadsN.find((load) => typed?.capacityN !== undefined && load > typed.capacityN * (1 + 1e-9));
  return [
    ...(over === undefined ? [] : [{ code: "aboveReferenceCapacity", stops: true, about: over } as const]),
    ...(typed?.dueOn !== undefined && typed.dueOn < today
      ? [{ code: "referencePastDue", stops: false, about: typed.dueOn } as const]
      : []),
  ];
}

/** Loads the rig's weights cannot give. */
function rigProblems({ weights }: Reference, { plan, conditions }: Parsed<"proof.start">): ProofDraft["problems"] {
  if (weights === undefined) return [];
  const { conditions: known } = aboutWith({ conditions });
  const isOff = (loadN: number) => Math.abs(hangFor(weights, known, loadN).forceN - loadN) > tolerance.load * loadN;
  return plan.loadsN
    .filter((loadN) => loadN > 0 && isOff(loadN))
    .map((about) => ({ code: "notOnRig", stops: true, about }));
}

function howRead(
  { kind }: Reference,
  { gaugeRead, referenceRead: wanted }: Parsed<"proof.start">,
): ProofDraft["referenceRead"] {
  // Two ports have one time base; a figure typed for the gauge has none.
  const transducer = gaugeRead === "live" ? "live" : "typed";
  const usual = ({ weights: "weights", transducer, typed: "typed" } as const)[kind];
  if (wanted === undefined || wanted === usual || wanted === "typed") return wanted ?? usual;
  throw new AppError("invalid", `A reference of this kind cannot be read as ${wanted}.`, {
    key: "proof.howRead",
    field: "referenceRead",
  });
}

function inUse<T extends { readonly state: "inUse" | "retired" }>(
  record: T | undefined,
  what: "gauge" | "adapter" | "reference",
): T {
  if (record === undefined)
    throw new AppError("notFound", `There is no such ${what} in this data file.`, { key: `proof.no.${what}` });
  if (record.state === "retired")
    throw new AppError("invalid", `This ${what} is retired. Take it into use again first.`, {
      key: `proof.retired.${what}`,
    });
  return record;
}
