import { z } from "zod";
import { affectedOf } from "../proofs/affectedOf.ts";
import { defineJob } from "./Job.ts";

const id = z.string();

/** What the checks made with a gauge or adapter found off would say with what was found. Nothing is filed. */
export const job = defineJob({
  args: z.union([
    z.strictObject({ proofId: id }),
    z.strictObject({ adapterId: id, scale: z.number(), relative: z.number() }),
  ]),
  run: (doubt, { db, goOn, progress }) => affectedOf(db, doubt, { goOn, progress }),
});
