import type { DueItem } from "../round/due/DueFacts.ts";
import type { WorksCalendar } from "../round/due/WorksCalendar.ts";
import type { DumpField } from "../round/dump/DumpFormat.ts";
import type { DumpQuestion } from "../round/dump/LearnedDump.ts";
import type { Question, Visit } from "../round/match/RoundMatch.ts";
import type { Limits } from "../verdict/Judgement.ts";
import type { CheckRow } from "./recordViews.ts";

/** Rounds, docking and what is printed for them, as pages see it. */

export type DueView = {
  /** Plain date in the works' time zone. */
  readonly today: string;
  /** Overdue first. */
  readonly rows: readonly DueItem[];
  readonly calendar: WorksCalendar;
};

export type StopView = {
  readonly spindleId: string;
  readonly name: string;
  readonly machine: string;
  readonly area: string;
  readonly taper: string;
  readonly adapterId: string | undefined;
  readonly location: string | undefined;
  readonly expectedN: number | undefined;
  readonly limits: Limits;
  /** Not in use any more: nothing is filed for it. */
  readonly retired: boolean;
  /** Put off to come back to, or left out of the round, and why. */
  readonly passed: { readonly as: "later" | "leftOut"; readonly why: string } | undefined;
  /** The check that was made on this round's day or after. */
  readonly done: { readonly checkId: string; readonly valueN: number | undefined } | undefined;
};

export type RoundView = {
  readonly roundId: string;
  /** Another one as soon as anything of it is changed: what acts on it says which one it saw. */
  readonly version: string;
  readonly name: string;
  readonly on: string;
  readonly state: "open" | "done" | "cancelled";
  readonly gaugeId: string | undefined;
  readonly operatorId: string | undefined;
  readonly stops: readonly StopView[];
  readonly found: "exact" | "good" | "asSet";
  readonly adapterChanges: number;
  readonly walk: number;
  readonly note: string;
};

export type TakeView = {
  readonly number: string | undefined;
  readonly raw: string;
  readonly figure: string;
  readonly valueN: number | undefined;
  readonly refused: "torque" | "overload" | "unreadable" | undefined;
  /** Date and time as the gauge wrote it. */
  readonly stamp: string | undefined;
  readonly badDate: boolean;
  /** The same by this PC's clock. */
  readonly atMs: number | undefined;
  readonly location: string | undefined;
  readonly kind: "held" | "live" | undefined;
};

/** A warning that wants a reason, or that blocks, with the spindles it is about. */
export type DockingWarning = {
  readonly code: string;
  readonly about: string | undefined;
  readonly weight: "block" | "ask";
  readonly spindleIds: readonly string[];
};

/** What was read and where it is proposed to go. Nothing of it is filed. */
export type DockingView = {
  readonly dockingId: string;
  readonly roundId: string | undefined;
  readonly gaugeId: string | undefined;
  readonly source: "port" | "file" | "sheet";
  readonly fileName: string | undefined;
  /** Undefined: nothing in it looks like readings; `columns` then shows what there is. */
  readonly formatName: string | undefined;
  readonly columns: readonly {
    readonly head: string | undefined;
    readonly sample: string;
    readonly field: DumpField["field"];
  }[];
  /** What the sample could not tell: nothing is matched before it is answered. */
  readonly undecided: readonly DumpQuestion[];
  readonly clock:
    | {
        /** Gauge minus PC, ms. */
        readonly offsetMs: number;
        readonly driftPpm: number | undefined;
        readonly setSince: boolean;
        /** The gauge did not say what its clock shows: its newest reading is taken as just made. */
        readonly assumed: boolean;
      }
    | undefined;
  readonly lines: {
    readonly rejected: readonly { readonly line: number; readonly raw: string; readonly why: "checksum" | "fields" }[];
    readonly passedOver: number;
    readonly announced: number | undefined;
    readonly incomplete: boolean;
    readonly tooMany: boolean;
  };
  /** Readings of this memory that were docked before: left out. */
  readonly known: number;
  /** It cannot be told for sure which were. */
  readonly doubtful: boolean;
  /** The new readings, in the order of the memory. */
  readonly takes: readonly TakeView[];
  readonly stops: readonly StopView[];
  readonly visits: readonly Visit[];
  readonly questions: readonly Question[];
  readonly missing: readonly number[];
  readonly warnings: readonly DockingWarning[];
};

export type DockingResult = {
  readonly rows: readonly CheckRow[];
  /** It had been accepted before: nothing was added. */
  readonly again: boolean;
};

/** A file made for the user to keep or print. */
export type MadeFile = { readonly fileName: string; readonly mime: string; readonly base64: string };
