import type { Check } from "../ledger/check.ts";
import type { Adapter, Gauge, ServiceEvent, Spindle } from "../ledger/register.ts";
import type { Role } from "../people/rights.ts";
import type { DueItem } from "../round/due/DueFacts.ts";
import type { SharedMove } from "../trend/commonMode.ts";
import type { LikeComparison } from "../trend/compareLike.ts";
import type { FleetPlace } from "../trend/rankFleet.ts";
import type { Trend } from "../trend/trendOf.ts";
import type { Reason, Verdict } from "../verdict/Judgement.ts";
import type { TodaysWord } from "../verdict/todaysWord.ts";

/** Rows and pages of what is filed. */

export type SpindleRow = {
  readonly spindle: Spindle;
  /** Undefined: never measured. */
  readonly verdict: Verdict | undefined;
  /** A `stop` that nobody has released. */
  readonly stopped: boolean;
  readonly last: CheckRow | undefined;
  readonly checkCount: number;
  readonly baselineN: number | undefined;
  /** Up to 24 last values as fractions of the baseline, oldest first. */
  readonly spark: readonly number[];
};

export type CheckRow = {
  readonly checkId: string;
  readonly spindleId: string;
  readonly measuredAtMs: number;
  readonly valueN: number | undefined;
  readonly expandedN: number | undefined;
  readonly standardUncertaintyN: number | undefined;
  readonly verdict: Verdict;
  readonly basis: "settled" | "peak" | "typed";
  /** Measured here, typed in, read out of a gauge's memory, or taken over from an old list. */
  readonly source: Check["source"];
  readonly n: number;
  readonly dropFromBaseline: number | undefined;
  readonly dropFromPrevious: number | undefined;
  readonly gaugeId: string | undefined;
  readonly adapterId: string | undefined;
  readonly operatorId: string | undefined;
  readonly isBaseline: boolean;
  /** Why the check no longer counts. */
  readonly voided: { readonly reason: string } | undefined;
};

export type SpindlePage = {
  readonly row: SpindleRow;
  readonly checks: readonly CheckRow[];
  readonly moreChecks: boolean;
  readonly events: readonly ServiceEvent[];
  readonly trend: Trend;
  /** Of the last checks that count, oldest first: what only the whole check tells. */
  readonly details: readonly CheckDetail[];
  readonly stop: { readonly checkId: string; readonly sinceMs: number } | undefined;
  /** When it is to be measured next and why, as the due list has it; undefined: not in use. */
  readonly due: DueItem | undefined;
};

export type CheckDetail = {
  readonly checkId: string;
  /** Tool changes of the machine then. */
  readonly counter: number | undefined;
  /** Standard deviation from clamping to clamping inside the check. */
  readonly scatterN: number | undefined;
};

export type CheckPage = {
  readonly check: Check;
  readonly row: CheckRow;
  readonly hasWaveform: readonly string[];
  readonly origin: string;
  readonly seq: number;
  readonly hash: string;
  /** What today's limits and rules would say; undefined when they are those of the day and say the same. */
  readonly today: TodaysWord | undefined;
};

/** How many checks were filed with one verdict and would get another, or the same, today. */
export type VerdictCount = { readonly filed: Verdict; readonly today: Verdict; readonly count: number };

export type ChangedCheck = {
  readonly checkId: string;
  readonly spindleId: string;
  readonly measuredAtMs: number;
  readonly valueN: number | undefined;
  readonly filed: Verdict;
  readonly today: Verdict;
  /** What decides today. */
  readonly reason: Reason | undefined;
};

/** What `checks.rejudge` finishes with: today's word on every check that counts, beside the filed verdicts. */
export type Rejudged = {
  readonly counts: readonly VerdictCount[];
  /** The gravest of today's answers first, then the newest; no more than a thousand. */
  readonly changed: readonly ChangedCheck[];
  readonly changedCount: number;
  /** Of a spindle that is not in the register, or with figures that no judgement takes. */
  readonly notJudged: number;
};

/** Readings of one cycle; times in seconds from its own first reading, or reading numbers when no rate was known. */
export type WaveformView = {
  readonly cycleId: string;
  readonly timed: boolean;
  readonly t: readonly number[];
  readonly forceN: readonly number[];
};

export type OperatorView = {
  readonly operatorId: string;
  /** As it is to be shown on this PC: the name or the initials; the end of the number where no name is kept. */
  readonly name: string;
  readonly initials: string | undefined;
  /** For whoever edits it; undefined: erased, or never kept here. */
  readonly fullName: string | undefined;
  readonly hasPin: boolean;
  readonly role: Role;
  readonly state: "inUse" | "retired";
};
export type GaugeRow = {
  readonly gauge: Gauge;
  /** `off`: the newest proof found it off, and the curve from before still corrects it. */
  readonly proofState: "none" | "current" | "pastDue" | "off";
  readonly checkCount: number;
};
export type AdapterRow = {
  readonly adapter: Adapter;
  readonly proofState: "none" | "current" | "pastDue";
  readonly checkCount: number;
};

export type FleetView = {
  /** In the order in which to look after them. */
  readonly rows: readonly FleetPlace[];
  /** Gauges and adapters whose spindles moved together, the strongest first. */
  readonly commonMode: readonly SharedMove[];
  /** Each spindle beside those of the same taper and nominal force; left out where there are under four of a kind. */
  readonly like: readonly LikeComparison[];
  /** When each is to be measured next, overdue first. */
  readonly due: readonly DueItem[];
};
