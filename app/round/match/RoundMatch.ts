import type { ScreenedTake } from "../take/screenTakes.ts";

/** What is asked about before anything is filed. */
export type QuestionCode =
  | ScreenedTake["code"]
  | "unitFactor"
  | "swapped"
  | "fitsAnother"
  | "maximumKept"
  | "alike"
  | "unsure"
  | "belongsNowhere"
  | "unknownLocation"
  | "wrongLocation"
  | "clockPutBack";

/** What the program would do; the user says yes or something else. */
export type Proposal = "leaveOut" | "countOnce" | "scale" | "swap" | "fileAsShown" | "orderOnly" | "measureAgain";

export type Question = {
  readonly code: QuestionCode;
  /** Positions of takes it is about. */
  readonly takes: readonly number[];
  /** Positions of stops it is about. */
  readonly stops: readonly number[];
  readonly proposal: Proposal;
  /** What to multiply the force with. */
  readonly factor?: number;
};

/** Whether a visit can be filed as it stands. `sure` alone goes without a question. */
export type Confidence = "sure" | "likely" | "open";

/** Takes of one visit, with the spindle they are proposed for. */
export type Visit = {
  readonly takes: readonly number[];
  readonly meanN: number;
  readonly stop: number | undefined;
  readonly runnerUp: number | undefined;
  readonly confidence: Confidence;
  /** What its force was multiplied with for the proposal; 1 as it stands. */
  readonly factor: number;
  /** The proposal is not to file it. */
  readonly leftOut: boolean;
};

export type RoundMatch = {
  readonly visits: readonly Visit[];
  readonly questions: readonly Question[];
  /** Stops without a visit. */
  readonly missing: readonly number[];
};
