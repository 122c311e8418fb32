import { describe, expect, it } from "vitest";
import { cannotInject, faultsOf, injectFaults } from "../../support/storeTrial/injectFaults.ts";

/** The short form: each act with failing calls some way apart. Every single call is tried by `npm run soak -- store`. */
const trials: readonly (readonly [string, number, number])[] = [
  ["accept", 3, 19],
  ["void", 3, 17],
  ["merge", 3, 19],
  ["backup", 2, 17],
  ["restore", 5, 29],
  ["migrate", 2, 19],
  ["import", 3, 23],
  ["importChecks", 3, 29],
  ["export", 1, 31],
  ["signHeads", 4, 23],
];

const why = cannotInject();
// A test that did not run must not look like one that passed.
if (why !== undefined) process.stderr.write(`SKIPPED: faults below the program are not tried, ${why}\n`);

describe.skipIf(why !== undefined)("with a disk that fails below the program", () => {
  it.each(trials)(
    "%s comes about whole or not at all, whichever sync or write fails",
    async (act, syncStep, writeStep) => {
      for (const fault of faultsOf(act).filter(
        ({ call, lasting }) => act === "accept" || lasting === (call !== "fsync"),
      )) {
        const trial = await injectFaults(act, fault, fault.call === "fsync" ? syncStep : writeStep);
        expect(trial.wrong).toEqual([]);
        expect(trial.refused).toBeGreaterThan(0);
      }
    },
    60_000,
  );
});
