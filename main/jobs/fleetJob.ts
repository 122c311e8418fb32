import { z } from "zod";
import { fleetOf } from "../fleet/fleetOf.ts";
import { defineJob } from "./Job.ts";

/** Ranks all spindles and looks for what moved together. */
export const job = defineJob({
  args: z.strictObject({}),
  run: (_, { db, goOn }) => fleetOf(db, goOn),
});
