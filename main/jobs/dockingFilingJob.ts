import { z } from "zod";
import type { Parsed } from "../../app/contract/methods.ts";
import { AppError, type Failure } from "../../app/contract/result.ts";
import { works } from "../../app/ledger/register.ts";
import { acceptDocking, type FiledDocking, Overtaken } from "../rounds/acceptDocking.ts";
import type { DockingRequest } from "../rounds/DockingWork.ts";
import { unpackWork } from "../rounds/packWork.ts";
import { StoreError } from "../store/StoreError.ts";
import { defineJob } from "./Job.ts";

/** Somebody measures beside it at most every few seconds: a third try is not overtaken again. */
const TRIES = 3;

/** Files a docking of a full memory: all of it in one transaction, or nothing. */
export const job = defineJob({
  files: true,
  args: z.strictObject({
    // Put together by the core: from a call its schema has seen, and from what a thread of ours has read.
    input: z.custom<Parsed<"docking.accept">>((value) => typeof value === "object" && value !== null),
    request: z.custom<DockingRequest>((value) => typeof value === "object" && value !== null),
    bytes: z.instanceof(Uint8Array),
    works,
    version: z.string(),
  }),
  run({ input, request, bytes, ...facts }, { openStore }): { filed: FiledDocking } | { refused: Failure } {
    const work = unpackWork({ bytes }, request);
    const store = openStore();
    for (let tried = 1; ; tried += 1) {
      try {
        return { filed: acceptDocking(input, work, { ...facts, store, nowMs: Date.now() }) };
      } catch (cause) {
        if (cause instanceof AppError) {
          const { code, message, key, field } = cause;
          return { refused: { code, message, key, field } };
        }
        if (!(cause instanceof Overtaken)) throw cause;
        if (tried === TRIES)
          throw new StoreError(
            "busy",
            "Others are filing just now. Wait a moment and accept again; nothing was filed.",
          );
      }
    }
  },
});
