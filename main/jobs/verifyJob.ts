import { availableParallelism } from "node:os";
import { z } from "zod";
import type { DamageList } from "../store/ledger/DamageList.ts";
import { entryCount } from "../store/ledger/slices.ts";
import { verifyFile } from "../store/ledger/verifyFile.ts";
import type { Walked, Work } from "../store/ledger/walkSlices.ts";
import { defineJob, type JobContext } from "./Job.ts";

type Part = Walked & { readonly damage: Pick<DamageList, "kept" | "count"> };

/** Below so many entries further threads cost more than they bring. */
const WORTH_IT = 5_000;

/** Walks the whole data file. `rebuild`: also makes every projection anew and compares. */
export const job = defineJob({
  args: z.strictObject({ rebuild: z.boolean().default(false) }),
  run({ rebuild }, context) {
    return verifyFile(context.db, { rebuild, watch: context, helpers: (work) => helpers(context, work) });
  },
});

function helpers(context: JobContext, work: Work): Promise<Part>[] {
  const count = entryCount(context.db) < WORTH_IT ? 0 : Math.min(availableParallelism(), 4) - 1;
  // `verifyPart` answers a Part: it is this file's other half
  return Array.from({ length: count }, () => context.fork("verifyPart", work) as Promise<Part>);
}
