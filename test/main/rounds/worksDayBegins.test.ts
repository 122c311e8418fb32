import { expect, it } from "vitest";
import { worksDayBegins } from "../../../main/rounds/worksDayBegins.ts";

// From the IANA time zone database: Berlin is UTC+1, in summer +2; Kiritimati +14; Santiago put its clocks forward at the
// midnight that began 8 September 2024, so that day began at 01:00 (UTC-3).
it.each([
  ["2026-01-15", "Europe/Berlin", "2026-01-14T23:00:00Z"],
  ["2026-07-15", "Europe/Berlin", "2026-07-14T22:00:00Z"],
  ["2026-07-15", "Pacific/Kiritimati", "2026-07-14T10:00:00Z"],
  ["2026-07-15", "Pacific/Pago_Pago", "2026-07-15T11:00:00Z"],
  ["2024-09-08", "America/Santiago", "2024-09-08T04:00:00Z"],
])("%s in %s begins at %s", (day, zone, at) => {
  expect(new Date(worksDayBegins(day, zone)).toISOString()).toBe(new Date(at).toISOString());
});
