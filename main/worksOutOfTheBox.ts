import type { Works } from "../app/ledger/register.ts";

/** What stands before anybody has described the works: the rule that leaves undecided what is undecided. */
export function worksOutOfTheBox(worksId: string): Works {
  return {
    worksId,
    name: "My works",
    timeZone: Intl.DateTimeFormat().resolvedOptions().timeZone,
    rule: { rule: "iso14253" },
    cautionDrop: 0.1,
    actDrop: 0.2,
    unitShown: "kN",
    intervalDays: 90,
  };
}
