import { z } from "zod";
import { plainDate } from "../../app/ledger/fields.ts";
import { plainCalendar, type WorksCalendar } from "../../app/round/due/WorksCalendar.ts";
import type { Db } from "../store/db.ts";
import { readSettings } from "../store/records/works.ts";

export const CALENDAR_KEY = "worksCalendar";

const calendar = z.strictObject({
  weekdays: z.array(z.number().int().min(1).max(7)).min(1),
  closed: z.array(z.strictObject({ from: plainDate, to: plainDate })),
});

/** The works' calendar as last set; Monday to Friday until then, or when the setting cannot be read. */
export function worksCalendar(db: Db): WorksCalendar {
  const read = calendar.safeParse(readSettings(db)[CALENDAR_KEY]);
  return read.success ? read.data : plainCalendar;
}
