import type { CheckReason } from "../../app/ledger/check.ts";
import type { Reference } from "../../app/ledger/proof.ts";
import type { Adapter, Gauge, ServiceEvent, Spindle, StoredPattern, Works } from "../../app/ledger/register.ts";
import type { ProofPlan } from "../../app/proof/plan/ProofPlan.ts";
import type { PermissibleError } from "../../app/proof/working/PermissibleError.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";

/** One visit to a spindle: who, where, with what, and the lines the gauge sent. No verdict: that is the program's to find. */
export type DemoCheck = {
  readonly spindleId: string;
  readonly adapterId: string;
  readonly gaugeId: string;
  readonly operatorId: string;
  /** When it was filed: UTC instant, and the offset of the works' wall clock. */
  readonly measuredAt: string;
  readonly offsetMinutes: number;
  readonly reason: CheckReason;
  readonly spindleWarm: boolean;
  readonly temperatureC: number;
  /** Tool changes by the machine's own count. */
  readonly counter: number;
  readonly note: string | null;
  readonly unit: ForceUnit;
  readonly rateHz: number;
  /** What the gauge sent during the series, in its pattern. */
  readonly lines: string;
};

/** One proof of a gauge as found: by what plan, and what reference and gauge showed. No result: that is the program's to find. */
export type DemoProof = {
  readonly gaugeId: string;
  readonly referenceId: string;
  readonly operatorId: string;
  readonly provedAt: string;
  readonly offsetMinutes: number;
  readonly plan: ProofPlan;
  readonly mpe: PermissibleError | null;
  readonly temperatureC: number;
  readonly temperatureRangeK: number;
  readonly dueOn: string;
  readonly note: string | null;
  /** One for each reading the plan asks for, in its order; indications with the zero still in them. */
  readonly takings: readonly { readonly referenceN: number; readonly indicationN: number }[];
};

/**
 * The demo works, one record at a time: the register first, then checks and service events as they happened. Ids
 * are UUIDv7 made from the seed, so that the same seed and end give the same works.
 */
export type DemoRecord =
  | { readonly kind: "works"; readonly body: Works }
  | {
      readonly kind: "operator";
      readonly body: { readonly operatorId: string; readonly name: string; readonly role: "technician" | "planner" };
    }
  | { readonly kind: "linePattern"; readonly body: StoredPattern }
  | { readonly kind: "gauge"; readonly body: Gauge }
  | { readonly kind: "adapter"; readonly body: Adapter }
  | { readonly kind: "spindle"; readonly body: Spindle }
  | { readonly kind: "reference"; readonly body: Reference }
  | { readonly kind: "proof"; readonly body: DemoProof }
  | { readonly kind: "serviceEvent"; readonly body: ServiceEvent }
  | { readonly kind: "check"; readonly body: DemoCheck };
