import type { Proof, Reference } from "../../app/ledger/proof.ts";
import type { Gauge } from "../../app/ledger/register.ts";
import { nextAct } from "../../app/proof/plan/nextAct.ts";
import { type ProofMethod, presetPlan } from "../../app/proof/plan/ProofPlan.ts";
import type { ProofState } from "../../app/proof/plan/ProofState.ts";
import { confirmAct, type Stepped, takeReading } from "../../app/proof/plan/proofSteps.ts";
import { outcomeOf } from "../../main/proofs/outcomeOf.ts";
import type { ProofDraft } from "../../main/proofs/ProofDraft.ts";
import { proofBody } from "../../main/proofs/proofBody.ts";
import { idOf, invented } from "./aCheck.ts";

type Over = {
  readonly seed?: number;
  readonly gaugeId?: string;
  readonly on?: string;
  readonly method?: ProofMethod;
  /** Indication over force. */
  readonly gain?: number;
  readonly as?: "found" | "left";
};

const typed: Reference = {
  referenceId: idOf(20),
  name: "Typed loads",
  kind: "typed",
  typed: { relative: 1e-4, standardN: 0 },
  state: "inUse",
};

/** A whole proof as it is filed, typed through its preset on an invented gauge of 30 kN; the same seed gives the same. */
export function aProof({
  seed = 1,
  gaugeId = idOf(3),
  on = "2026-03-02",
  method = "iso376",
  gain = 1.001,
  as = "found",
}: Over = {}): Proof {
  const next = invented(seed);
  const gauge: Gauge = { gaugeId, name: "Gauge", capacityN: 30_000, resolutionN: 1, state: "inUse" };
  const provedAtMs = Date.parse(`${on}T08:00:00.000Z`);
  const draft: ProofDraft = {
    proofId: idOf(7_000 + seed),
    as,
    gauge,
    adapter: undefined,
    reference: typed,
    operatorId: undefined,
    gaugeRead: "typed",
    referenceRead: "typed",
    auto: false,
    about: {
      customer: "Toolroom, hall B",
      workOrder: undefined,
      edition: "own copy of 2011",
      accreditation: undefined,
      note: "",
      conditions: { temperatureC: 21, temperatureRangeK: 1, pressurePa: 100_000, humidity: 0.4 },
      choices: { degree: null, mpe: null, rule: null, resolutionN: 1, perKelvin: null },
    },
    startedAtMs: provedAtMs - 3_600_000,
    planned: taken(method, gauge.capacityN, (forceN) => forceN * (gain + 2e-5 * (next() - 0.5)) + 2),
    problems: [],
    unit: "N",
    offset: null,
  };
  return proofBody(draft, outcomeOf(draft, [], on), {
    provedAtMs,
    offsetMinutes: 60,
    on,
    adjustmentId: null,
    curveTaken: true,
    dueOn: null,
    programVersion: "0.1.0",
    clockDoubtful: false,
  });
}

function taken(method: ProofMethod, gaugeCapacityN: number, shows: (forceN: number) => number): ProofState {
  let state: ProofState = { plan: presetPlan(method, gaugeCapacityN), gaugeCapacityN, events: [] };
  const at = "2026-03-02T07:30:00.000Z";
  for (let todo = nextAct(state); todo.kind === "act"; todo = nextAct(state)) {
    const { act, index } = todo;
    if (act.kind !== "read") state = accepted(confirmAct(state, index, at));
    else {
      const indicationN = shows(act.targetN);
      const taking = {
        referenceN: act.targetN,
        referenceStandardN: 1e-4 * act.targetN,
        indicationN,
        n: 1,
        steady: true,
      };
      state = accepted(takeReading(state, index, taking, at));
    }
  }
  return state;
}

function accepted(stepped: Stepped): ProofState {
  if (stepped.kind === "refused") throw new Error(`the plan's own act was refused: ${stepped.why}`);
  return stepped.state;
}
