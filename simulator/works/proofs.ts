import type { Reference } from "../../app/ledger/proof.ts";
import { type ProofPlan, presetPlan } from "../../app/proof/plan/ProofPlan.ts";
import { proofActs } from "../../app/proof/plan/proofActs.ts";
import type { Random } from "../physics/Random.ts";
import { dateAgo, instantAgo, toWorkingDay } from "./calendar.ts";
import type { DemoProof } from "./DemoWorks.ts";
import type { DemoRegister } from "./register.ts";
import { type GaugeName, gainOf } from "./stories.ts";

/** How many days before the end each gauge was proved; Gauge 2, whose spindles all moved, was proved anew last week. */
const provedAgo: Readonly<Record<GaugeName, readonly number[]>> = {
  "Gauge 1": [910, 550, 190],
  "Gauge 2": [780, 420, 4],
  "Gauge 3": [950, 590, 230],
};

const INTERVAL_DAYS = 365;
const PERMITTED = 0.01; // of the load (common practice, no source)

/** The transducer the works proves its gauges against, as an invented laboratory calibrated it. */
export function demoReference(referenceId: string, dayAgo: (days: number) => string): Reference {
  return {
    referenceId,
    name: "Reference 100 kN",
    serial: "DEMO-R1",
    kind: "transducer",
    transducer: {
      curve: {
        version: 1,
        coefficients: [0, 1],
        fromN: 1_000,
        toN: 100_000,
        uncertainty: [
          { atN: 1_000, relative: 0.0003 },
          { atN: 10_000, relative: 0.00015 },
          { atN: 100_000, relative: 0.0001 },
        ],
      },
      capacityN: 100_000,
      class: "0.5",
      calibratedOn: dayAgo(1_000),
      dueOn: dayAgo(-90),
      driftPerYear: 0.0001,
    },
    certificate: "Invented laboratory, demo certificate 1",
    state: "inUse",
  };
}

export type DemoProving = { readonly atMs: number; readonly body: DemoProof };

/** Every proof of the works' gauges, in no order: what reference and gauge showed, no result. That is the program's to find. */
export function demoProofs(
  register: DemoRegister,
  referenceId: string,
  endMs: number,
  random: Random,
): readonly DemoProving[] {
  return (Object.keys(provedAgo) as GaugeName[]).flatMap((name) =>
    provedAgo[name].map((ageDays, i) =>
      proving(register, referenceId, endMs, { name, ageDays, first: i === 0 }, random.branch()),
    ),
  );
}

function proving(
  register: DemoRegister,
  referenceId: string,
  endMs: number,
  { name, ageDays, first }: { readonly name: GaugeName; readonly ageDays: number; readonly first: boolean },
  random: Random,
): DemoProving {
  const gauge = register.gaugeOf(name);
  const day = toWorkingDay(endMs, ageDays);
  const { atMs, offsetMinutes } = instantAgo(endMs, day, 600 + random.below(60));
  const plan = planFor(gauge.capacityN, name === "Gauge 1" && !first);
  const temperatureC = Math.round((20 + random.normal()) * 10) / 10;
  return {
    atMs,
    body: {
      gaugeId: gauge.gaugeId,
      referenceId,
      operatorId: register.operatorIds[0]!,
      provedAt: new Date(atMs).toISOString(),
      offsetMinutes,
      plan,
      mpe: plan.method === "working" ? { kind: "relative", fraction: PERMITTED } : null,
      temperatureC,
      temperatureRangeK: 0.8,
      dueOn: dateAgo(endMs, day - INTERVAL_DAYS),
      note: day < 100 ? "All spindles measured with this gauge moved together; proved anew before its date." : null,
      takings: takings(plan, gauge.capacityN, gainOf(name, day), random),
    },
  };
}

/** Loads from a tenth of the capacity, so that a curve reaches down to what the smallest spindles hold with. */
function planFor(capacityN: number, byClass: boolean): ProofPlan {
  if (byClass) return presetPlan("iso376", capacityN);
  return {
    ...presetPlan("working", capacityN),
    loadsN: [0.1, 0.2, 0.4, 0.6, 0.8, 1].map((share) => share * capacityN),
  };
}

/** One pair for each reading of the plan, in its order. */
function takings(plan: ProofPlan, capacityN: number, gain: number, random: Random): DemoProof["takings"] {
  const zeroN = Math.round(random.normal() * 3) * 10;
  const seats = new Map<string, number>();
  const whole = (n: number) => Math.round(n * 10) / 10;
  return proofActs(plan).flatMap((act) => {
    if (act.kind !== "read") return [];
    if (!seats.has(act.run)) seats.set(act.run, 1 + 2e-4 * random.normal());
    const referenceN = whole(
      act.targetN * (1 + 0.002 * (2 * random.uniform() - 1) * (act.targetN < capacityN ? 1 : 0)),
    );
    // On the way down and after minutes under load a gauge shows a little more; figures are means of many readings.
    const lag =
      act.direction === "down" ? 2e-4 * (capacityN - referenceN) : act.direction === "creep300" ? 1e-4 * capacityN : 0;
    const indicationN = referenceN * gain * seats.get(act.run)! + lag + zeroN + (capacityN / 40_000) * random.normal();
    return [{ referenceN, indicationN: whole(indicationN) }];
  });
}
