import { z } from "zod";
import { fleetView } from "../fleet/fleetView.ts";
import { defineJob } from "./Job.ts";

/** Ranks all spindles, looks for what moved together, and says when each is due. */
export const job = defineJob({
  args: z.strictObject({ nowMs: z.number() }),
  run: ({ nowMs }, { db, goOn }) => fleetView(db, nowMs, goOn),
});
