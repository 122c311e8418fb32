import type { Limits, Verdict } from "../verdict/Judgement.ts";

/** Of a check that counts, what tells where its spindle is going: all that a ranking of many reads. */
export type CoursePoint = {
  readonly atMs: number;
  /** Tool changes of the machine at that time, where it shows them. */
  readonly counter?: number | undefined;
  /** Corrected force, newtons. */
  readonly valueN: number;
  /** Standard uncertainty (k = 1) of the value; absent where none was filed. */
  readonly standardUncertaintyN?: number | undefined;
  /** The part of it that every check with the same gauge and adapter shares (proof, adapter scale); absent: not split. */
  readonly commonUncertaintyN?: number | undefined;
  readonly gaugeId?: string | undefined;
  readonly adapterId?: string | undefined;
  /** `beforeService` keeps a check of the service's own day on the old side of it. */
  readonly reason?: string | undefined;
};

/** One check that counts. Voided checks are left out by whoever reads the history: they take no part in any trend. */
export type CheckPoint = CoursePoint & {
  readonly checkId: string;
  /** Standard deviation from clamping to clamping inside the check. */
  readonly seriesSN?: number | undefined;
  /** How many clampings that is from. */
  readonly seriesCount?: number | undefined;
  /** Mean creep over the holds, a fraction of the settled force. */
  readonly creep?: number | undefined;
  /** At least one cycle of it was flagged `notReleased`. */
  readonly notReleased?: boolean | undefined;
  readonly verdict: Verdict;
  /** The limits as they stood with the check; a change is named among the trend's notes. */
  readonly limits?: Limits | undefined;
};

export type ServiceKind =
  | "lubricated"
  | "gripper"
  | "springs"
  | "unitExchanged"
  | "setting"
  | "taperGround"
  | "crash"
  | "other";

/** Work on a spindle, or what happened to it. */
export type ServiceMark = {
  readonly eventId?: string | undefined;
  /** Start of that day in the works' time zone; checks of the day count as after it unless their reason says before. */
  readonly atMs: number;
  readonly kind: ServiceKind;
  readonly newBaseline: boolean;
};

/** What one spindle has been through, in any order; limits are today's. */
export type History<P extends CoursePoint = CheckPoint> = {
  readonly spindleId: string;
  readonly points: readonly P[];
  readonly events: readonly ServiceMark[];
  readonly limits: Limits;
};
