import { z } from "zod";
import { id } from "../ledger/fields.ts";
import { method, nothing } from "./method.ts";
import type { DataPlace } from "./supportViews.ts";

/** Calls about what lies where, what leaves the house, and help. */
export const support = {
  /** Everything that is kept on this PC, with its size. */
  "places.list": method<readonly DataPlace[]>()(nothing),
  /** Writes all that was filed by or about one person into a folder. `job.finished` carries a `PersonExported`. */
  "people.export": method<{ readonly jobId: string }>()(
    z.strictObject({ operatorId: id, folder: z.string().trim().min(1).max(1_000) }),
  ),
  /** Collects log and surroundings, without names. `job.finished` carries a `SupportMade`; nothing leaves this PC. */
  "support.collect": method<{ readonly jobId: string }>()(nothing),
} as const;
