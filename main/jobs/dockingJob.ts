import { z } from "zod";
import { works } from "../../app/ledger/register.ts";
import type { DockingRequest } from "../rounds/DockingWork.ts";
import { type PackedWork, packWork } from "../rounds/packWork.ts";
import { readDocking } from "../rounds/readDocking.ts";
import { defineJob } from "./Job.ts";

/** Reads what came back from a round and matches it to its spindles. Nothing is filed. */
export const job = defineJob({
  args: z.strictObject({
    // Put together by the core from a call its schema has seen.
    request: z.custom<DockingRequest>((value) => typeof value === "object" && value !== null),
    works,
    nowMs: z.number(),
  }),
  run: ({ request, ...facts }, { db, progress, goOn }): PackedWork =>
    packWork(readDocking(request, { ...facts, db, progress, goOn })),
});
