import type { RejectReason } from "./ReadingSink.ts";

/** What a decoder has seen so far. */
export type LineCounts = {
  lines: number;
  readings: number;
  /** Echoes and bare status lines. */
  asides: number;
  readonly rejected: Record<RejectReason, number>;
};

export const noCounts = (): LineCounts => ({
  lines: 0,
  readings: 0,
  asides: 0,
  rejected: { tooLong: 0, notAscii: 0, parity: 0, frame: 0, fields: 0, number: 0, unit: 0, checksum: 0, torque: 0 },
});
