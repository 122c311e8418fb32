import { z } from "zod";
import { id, instant, plainDate } from "../../app/ledger/fields.ts";
import { permissibleError, proofPlan } from "../../app/ledger/proof.ts";
import { nextAct } from "../../app/proof/plan/nextAct.ts";
import type { ProofState } from "../../app/proof/plan/ProofState.ts";
import { confirmAct, type Stepped, takeReading } from "../../app/proof/plan/proofSteps.ts";
import { referenceForce } from "../../app/proof/reference/ReferenceTransducer.ts";
import { readGauge } from "../store/records/gauges.ts";
import { proofsOf } from "../store/records/proofs.ts";
import { readReference } from "../store/records/references.ts";
import type { Store } from "../store/Store.ts";
import { appendProof } from "./appendProof.ts";
import { outcomeOf } from "./outcomeOf.ts";
import type { ProofDraft } from "./ProofDraft.ts";
import { proofBody } from "./proofBody.ts";

/** A proof as the generator of the demo works prints it. */
export const demoProof = z.strictObject({
  gaugeId: id,
  referenceId: id,
  operatorId: id,
  provedAt: instant,
  offsetMinutes: z.number(),
  plan: proofPlan,
  mpe: permissibleError.nullable(),
  temperatureC: z.number(),
  temperatureRangeK: z.number(),
  dueOn: plainDate,
  note: z.string().nullable(),
  takings: z.array(z.strictObject({ referenceN: z.number(), indicationN: z.number() })),
});

type Shown = z.infer<typeof demoProof>;

/** Readings averaged in each taking of the demo: five seconds at ten a second. */
const READINGS = 50;

/** Files a proof of the demo works: its plan is led through act by act as a real one is, and its result is worked out. */
export function fileDemoProof(store: Store, shown: Shown, version: string): void {
  const gauge = readGauge(store.db, shown.gaugeId);
  const reference = readReference(store.db, shown.referenceId);
  if (gauge === undefined || reference?.transducer === undefined)
    throw new RangeError("a demo proof names a gauge or a transducer that is not there");
  const on = shown.provedAt.slice(0, 10);
  const draft: ProofDraft = {
    proofId: store.newId(),
    as: "found",
    gauge,
    adapter: undefined,
    reference,
    operatorId: shown.operatorId,
    gaugeRead: "live",
    referenceRead: "live",
    auto: true,
    about: {
      customer: undefined,
      workOrder: undefined,
      edition: undefined,
      accreditation: undefined,
      note: shown.note ?? "",
      conditions: {
        temperatureC: shown.temperatureC,
        temperatureRangeK: shown.temperatureRangeK,
        pressurePa: null,
        humidity: null,
      },
      choices: { degree: null, mpe: shown.mpe, rule: null, resolutionN: null, perKelvin: null },
    },
    startedAtMs: Date.parse(shown.provedAt) - 5_400_000,
    planned: led(shown, gauge.capacityN, (netN) => referenceForce(reference.transducer!, netN, on).standardN),
    problems: [],
    unit: "kN",
    offset: null,
  };
  const outcome = outcomeOf(draft, proofsOf(store.db, gauge.gaugeId), on);
  const curveTaken = outcome.judged === "good" && outcome.curveRefused === undefined;
  appendProof(
    store,
    proofBody(draft, outcome, {
      provedAtMs: Date.parse(shown.provedAt),
      offsetMinutes: shown.offsetMinutes,
      on,
      adjustmentId: null,
      curveTaken,
      dueOn: curveTaken ? shown.dueOn : null,
      programVersion: version,
      clockDoubtful: false,
    }),
  );
}

function led(
  { plan, takings, provedAt }: Shown,
  gaugeCapacityN: number,
  standardOf: (netN: number) => number,
): ProofState {
  let state: ProofState = { plan, gaugeCapacityN, events: [] };
  const left = [...takings];
  for (let next = nextAct(state); next.kind === "act"; next = nextAct(state)) {
    const { index, act } = next;
    if (act.kind !== "read") {
      state = accepted(confirmAct(state, index, provedAt));
      continue;
    }
    const pair = left.shift();
    if (pair === undefined) throw new RangeError("a demo proof has fewer takings than its plan asks for");
    const taking = { ...pair, referenceStandardN: standardOf(pair.referenceN), n: READINGS, steady: true };
    state = accepted(takeReading(state, index, taking, provedAt));
  }
  return state;
}

function accepted(stepped: Stepped): ProofState {
  if (stepped.kind === "refused") throw new RangeError(`a demo proof was refused: ${stepped.why}`);
  return stepped.state;
}
