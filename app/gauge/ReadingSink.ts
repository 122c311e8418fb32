import type { ForceUnit } from "../quantity/forceUnits.ts";

/** What a decoded line says of its figure. `held`: the gauge shows its greatest reading, not the present one. */
export type ReadingState = "live" | "held" | "overload";

/** Why a line was not read. A closed list: screens and counters have a word for each. */
export type RejectReason =
  | "tooLong"
  | "notAscii"
  | "parity"
  | "frame"
  | "fields"
  | "number"
  | "unit"
  | "checksum"
  | "torque";

/**
 * Where decoded lines go, in the order they came. Plain calls instead of objects: at 10 kHz one
 * object a line would be most of the cost. Nothing is kept by the caller between calls.
 */
export type ReadingSink = {
  /**
   * One reading. It takes the next place in time.
   * @param forceN  indication in newtons; 0 and without meaning when `state` is `overload`
   * @param stampS  the gauge's own time in seconds as it was sent (not unwrapped), NaN when the line has none
   */
  reading(forceN: number, state: ReadingState, stampS: number): void;
  /** A line that could not be read. It keeps its place in time, so that the readings after it do. */
  rejected(reason: RejectReason): void;
  /** The unit of the readings from here on; called before the first reading and at each change. */
  unit?(unit: ForceUnit): void;
  /** A line that is no reading and takes no place in time: an echoed request, a bare status, an empty frame. */
  aside?(what: "echo" | "status"): void;
  /** A status word with a meaning for the user, each time it changes. */
  notice?(notice: "lowBattery" | "moving" | "stable" | "underload"): void;
};
