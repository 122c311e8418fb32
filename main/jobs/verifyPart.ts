import { z } from "zod";
import { DamageList } from "../store/ledger/DamageList.ts";
import { walkSlices } from "../store/ledger/walkSlices.ts";
import { defineJob } from "./Job.ts";

/** A second pair of hands for `verify`: takes slices of the same walk until none are left. */
export const job = defineJob({
  args: z.strictObject({ next: z.instanceof(SharedArrayBuffer), upTo: z.number(), waveformsUpTo: z.number() }),
  run(work, { db, goOn }) {
    const damage = new DamageList();
    const walked = walkSlices(db, work, damage, { goOn, progress: () => {} });
    return { ...walked, damage: { kept: damage.kept, count: damage.count } };
  },
});
