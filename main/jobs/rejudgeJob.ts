import { availableParallelism } from "node:os";
import { z } from "zod";
import type { Rejudged, VerdictCount } from "../../app/contract/recordViews.ts";
import { works } from "../../app/ledger/register.ts";
import type { Verdict } from "../../app/verdict/Judgement.ts";
import { gravest, type RejudgedPart, type RejudgeWork, rejudgeStretches } from "../fleet/rejudgeStretches.ts";
import { stretches } from "../store/records/judgeable.ts";
import { defineJob } from "./Job.ts";

/** Below so many stretches (about a thousand entries each) a further thread costs more than it brings. */
const WORTH_IT = 5;

/** What today's limits, rules and drop limits would say of every check that counts. Nothing is filed. */
export const job = defineJob({
  args: z.strictObject({ works }),
  async run(args, { db, progress, goOn, fork }): Promise<Rejudged> {
    const places = [...stretches(db), Number.MAX_SAFE_INTEGER];
    const work: RejudgeWork = { ...args, places, next: new SharedArrayBuffer(4) };
    const helping = places.length <= WORTH_IT ? 0 : Math.min(availableParallelism(), 4) - 1;
    const helpers = Array.from({ length: helping }, () => fork("rejudgePart", work) as Promise<RejudgedPart>); // this file's other half
    const all = Promise.all(helpers);
    all.catch(() => {}); // told below, when this thread is through
    const own = rejudgeStretches(db, work, { progress, goOn });
    return together([own, ...(await all)]);
  },
});

function together(parts: readonly RejudgedPart[]): Rejudged {
  const counts = new Map<string, number>();
  for (const part of parts)
    for (const [key, count] of Object.entries(part.counts)) counts.set(key, (counts.get(key) ?? 0) + count);
  const sum = (of: (part: RejudgedPart) => number) => parts.reduce((total, part) => total + of(part), 0);
  return {
    counts: [...counts].map(([key, count]): VerdictCount => {
      const [filed, today] = key.split(" ") as [Verdict, Verdict]; // as `rejudgeStretches` wrote it
      return { filed, today, count };
    }),
    changed: gravest(parts.flatMap((part) => part.changed)),
    changedCount: sum((part) => part.changedCount),
    notJudged: sum((part) => part.notJudged),
  };
}
