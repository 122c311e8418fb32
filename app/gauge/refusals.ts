import type { RejectReason } from "./ReadingSink.ts";

/** Why a field did not match, as the negative of its place here: positions and reasons share one number. */
export const reasons: readonly RejectReason[] = ["frame", "frame", "fields", "number", "unit", "checksum", "torque"];
export const FRAME = 1;
export const FIELDS = 2;
export const NUMBER = 3;
export const UNIT = 4;
export const CHECKSUM = 5;
export const TORQUE = 6;
