import type { Speech } from "./Speech.ts";

/** The one reason the program itself gives for a taking that does not count; every other is what somebody wrote. */
export const runBegunAnew = "the run was begun anew";

/** Why a taking was taken again, in the reader's language where the program said it. */
export const replacedReason = (reason: string, { language }: Speech): string =>
  reason === runBegunAnew && language === "de" ? "der Lauf wurde von vorn begonnen" : reason;
