import type { CheckReason } from "../ledger/check.ts";

/** The order a list shows them in. */
export const checkReasons: readonly CheckReason[] = [
  "routine",
  "baseline",
  "beforeService",
  "afterService",
  "afterCrash",
  "complaint",
  "other",
];
