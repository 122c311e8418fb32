import type { DateOrder, DumpFormat } from "./DumpFormat.ts";
import { dateOrder } from "./dateOrder.ts";

/** Words before a count (common practice, no source). */
const countWord = /^(count|records?|readings|total|end|anzahl|summe|ende)\b/i;

/** Lines that say how many records there are, and what the clock shows. */
export function announcements(bodies: readonly string[], records: number, order: DateOrder): Partial<DumpFormat> {
  const found: { countAfter?: string[]; clockAfter?: { text: string; order: DateOrder } } = {};
  for (const body of bodies) {
    const count = /^([A-Za-z][A-Za-z ]*[:= ]\s*)(\d{1,5})\D*$/.exec(body);
    // By its word it is believed whatever came; without one it must be near to what came.
    const near = count !== null && Math.abs(Number(count[2]) - records) <= Math.max(2, 0.3 * records);
    if (count !== null && (near || countWord.test(count[1]!)))
      found.countAfter = [...(found.countAfter ?? []), count[1]!];
    const clock = /^([A-Za-z][A-Za-z ]*[:= ]\s*)(\d[\d./-]{5,9}(?:T|,?\s+)\d{1,2}:\d\d.*)$/.exec(body);
    if (clock !== null) found.clockAfter = { text: clock[1]!, order: dateOrder([clock[2]!]) ?? order };
  }
  return found;
}
