import { z } from "zod";
import { works } from "../../app/ledger/register.ts";
import { rejudgeStretches } from "../fleet/rejudgeStretches.ts";
import { defineJob } from "./Job.ts";

/** A second pair of hands for `rejudge`: takes stretches of the same checks until none are left. */
export const job = defineJob({
  args: z.strictObject({ next: z.instanceof(SharedArrayBuffer), places: z.array(z.number()), works }),
  run: (work, { db, goOn }) => rejudgeStretches(db, work, { goOn, progress: () => {} }),
});
