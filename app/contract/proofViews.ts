import type { Adjustment, Proof, ProofChoices, ProofConditions, Reference } from "../ledger/proof.ts";
import type { Adapter, Gauge } from "../ledger/register.ts";
import type { AdapterFactor } from "../proof/after/adapterFactor.ts";
import type { AffectedCheck } from "../proof/after/affectedChecks.ts";
import type { ProofDrift } from "../proof/after/driftOfProofs.ts";
import type { NextDue } from "../proof/after/nextProofDue.ts";
import type { ScaleChange } from "../proof/after/scaleChange.ts";
import type { ProofRefusal } from "../proof/method/proofRefusal.ts";
import type { NextAct } from "../proof/plan/nextAct.ts";
import type { ProofPlan } from "../proof/plan/ProofPlan.ts";
import type { Taking } from "../proof/plan/ProofState.ts";
import type { PlanProblem } from "../proof/plan/planProblems.ts";
import type { ProofAct } from "../proof/plan/proofActs.ts";
import type { ProofCaution } from "../proof/plan/proofCautions.ts";
import type { StepRefusal } from "../proof/plan/proofSteps.ts";
import type { Alignment } from "../proof/reference/alignStreams.ts";
import type { ProofResult } from "../proof/result/ProofResult.ts";
import type { AstmE74Table } from "../proof/tables/astmE74Table.ts";
import type { Iso376Table } from "../proof/tables/iso376Table.ts";
import type { LinkState, LinkView } from "./linkViews.ts";
import type { AdapterRow, CheckRow } from "./recordViews.ts";

export type ReferenceRow = {
  readonly reference: Reference;
  /** Weights have no due date of their own: always `none`. */
  readonly dueState: "none" | "current" | "pastDue";
};

/** The one proof in work, as every page sees it. */
export type RunningProof = {
  readonly proofId: string;
  readonly as: "found" | "left";
  readonly gauge: Gauge;
  readonly adapter: Adapter | undefined;
  readonly reference: Reference;
  readonly operatorId: string | undefined;
  readonly about: ProofAbout;
  readonly plan: ProofPlan;
  readonly startedAtMs: number;
  /** The gauge's readings come from the open link, or are typed. */
  readonly gaugeRead: "live" | "typed";
  /** A transducer on a port of its own, figures typed, or weights that hang. */
  readonly referenceRead: "live" | "typed" | "weights";
  /** Readings are taken by themselves as soon as they may be. */
  readonly auto: boolean;
  readonly next: NextAct;
  /** The next act's cautions; those before the first load are confirmed with `proof.confirm`. */
  readonly cautions: readonly ProofCaution[];
  readonly acts: readonly ProofActView[];
  /** What speaks against plan and reference. What `stops` was refused at the start. */
  readonly problems: readonly PlanProblem[];
  /** For the next act with weights: which to hang, and the force they give. */
  readonly hang:
    | { readonly labels: readonly string[]; readonly forceN: number; readonly standardN: number }
    | undefined;
  readonly referenceLink: LinkView;
  readonly canFile: boolean;
};

/** What the report says of it beside the readings. */
export type ProofAbout = {
  readonly customer: string | undefined;
  readonly workOrder: string | undefined;
  readonly edition: string | undefined;
  readonly accreditation: string | undefined;
  readonly note: string;
  readonly conditions: ProofConditions;
  readonly choices: ProofChoices;
};

export type ProofActView = {
  readonly index: number;
  readonly act: ProofAct;
  readonly standing: "done" | "next" | "open";
  readonly taking: Taking | undefined;
  /** Taken again so many times, and why the last time. */
  readonly repeats: number;
  readonly lastReason: string | undefined;
};

/** One instrument as it stands this moment. */
export type InstrumentStand = {
  readonly state: LinkState;
  /** As shown, zero not taken off; the reference by its own curve. Undefined: nothing known now. */
  readonly forceN: number | undefined;
  /** 1 at rest, 0.5 at the limit, 0 at twice the limit: the steadiness bar. */
  readonly share: number;
  readonly steady: boolean;
};

/** Pushed a few times a second while a proof is read live. */
export type ProofWatch = {
  readonly proofId: string;
  /** Of the next act; undefined where it is no reading. */
  readonly index: number | undefined;
  readonly targetN: number | undefined;
  /** Undefined: typed. */
  readonly gauge: InstrumentStand | undefined;
  /** Undefined: typed or weights. */
  readonly reference: InstrumentStand | undefined;
  /** How far through approach, waiting and reading it is. */
  readonly phase: "idle" | "approach" | "waiting" | "reading" | "ready";
  readonly waitLeftS: number;
  readonly readLeftS: number;
  /** Why `proof.take` would refuse now; undefined when it would take. */
  readonly why: TakeRefusal | undefined;
  /** Time offset between the ports; undefined unless both are live. */
  readonly offset: Alignment | undefined;
};

export type TakeRefusal = StepRefusal | "noLink" | "noReferenceLink" | "tooFewReadings" | "waiting" | "otherGauge";

/** What the method makes of the readings so far. */
export type ProofOutcome = {
  readonly result: ProofResult | undefined;
  /** Why there is none, in English, and for other languages. */
  readonly refused: string | undefined;
  readonly refusedWhy: ProofRefusal | undefined;
  readonly judged: Proof["judged"];
  readonly change: Proof["change"];
  /** Why its curve cannot be taken into use; undefined when it can. */
  readonly curveRefused: string | undefined;
  readonly curveRefusedWhy: ProofRefusal | undefined;
  /** Proposed from drift; undefined where no curve came of it. */
  readonly nextDue: NextDue | undefined;
  /** Runs the method asks for and has not got, or zero returns: readings are kept and filed all the same. */
  readonly finished: boolean;
};

/** A table of limits, and whether it is one the laboratory has entered. */
export type ProofTableRow = { readonly own: boolean } & (
  | { readonly table: "iso376"; readonly value: Iso376Table }
  | { readonly table: "astmE74"; readonly value: AstmE74Table }
);

export type ProofRow = {
  readonly proofId: string;
  readonly gaugeId: string;
  readonly adapterId: string | undefined;
  readonly on: string;
  readonly provedAtMs: number;
  readonly as: "found" | "left";
  readonly method: Proof["plan"]["method"];
  readonly judged: Proof["judged"];
  readonly class: string | undefined;
  /** Whether the gauge was corrected with its curve from then on. */
  readonly curveTaken: boolean;
  /** The curve in use today came from this proof. */
  readonly inUse: boolean;
  readonly change: Proof["change"];
  /** Largest expanded uncertainty of its steps, percent of the load. */
  readonly worstPct: number | undefined;
  readonly dueOn: string | undefined;
};

export type GaugeProofs = {
  /** Newest first. */
  readonly rows: readonly ProofRow[];
  readonly adjustments: readonly Adjustment[];
  readonly drift: ProofDrift;
  /** From the last proof with a curve; undefined where there is none. */
  readonly nextDue: NextDue | undefined;
};

export type ProofPage = {
  readonly proof: Proof;
  readonly row: ProofRow;
  readonly operatorName: string | undefined;
  /** The adjustment between as found and as left, and the other proof of the pair. */
  readonly adjustment: Adjustment | undefined;
  readonly other: Proof | undefined;
  readonly drift: ProofDrift;
  readonly nextDue: NextDue | undefined;
  readonly origin: string;
  readonly seq: number;
  readonly hash: string;
};

export type AffectedRow = AffectedCheck & {
  readonly row: CheckRow;
  readonly spindleName: string;
  /** Already marked for a new measurement. */
  readonly marked: boolean;
};

/** Checks that a gauge or an adapter found off puts in doubt. Nothing filed is rewritten. */
export type AffectedView = {
  /**
   * The last proof before with a curve taken, or the day the scale in doubt was calibrated; undefined: there was none, and all
   * its checks are listed.
   */
  readonly since: { readonly proofId: string | undefined; readonly on: string } | undefined;
  /** The proof (or the scale) they are held against. */
  readonly foundOn: string | undefined;
  /** Newest first, those whose verdict would change before the others. */
  readonly rows: readonly AffectedRow[];
  readonly changedCount: number;
};

export type FactorView = {
  readonly factor: AdapterFactor | undefined;
  readonly refused: string | undefined;
  readonly refusedWhy: ProofRefusal | undefined;
  /** Against the scale it had; undefined where nobody had calibrated it. */
  readonly change: (ScaleChange & { readonly scale: number; readonly version: number }) | undefined;
  /** The adapter as filed; undefined when it was only worked out. */
  readonly filed: AdapterRow | undefined;
};
