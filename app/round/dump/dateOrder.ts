import type { DateOrder } from "./DumpFormat.ts";
import { dateParts, splitStamp } from "./parseStamp.ts";

/** Year first where four digits stand there; else a number over 12 tells the day. Undefined: it can be read both ways. */
export function dateOrder(cells: readonly string[]): DateOrder | undefined {
  const parts = cells.flatMap((cell) => {
    const found = dateParts(splitStamp(cell)?.[0] ?? cell);
    return found === undefined ? [] : [found];
  });
  if (parts.some(([a]) => a > 31)) return "ymd";
  const firstIsDay = parts.some(([a]) => a > 12);
  const secondIsDay = parts.some(([, b]) => b > 12);
  if (firstIsDay === secondIsDay) return undefined;
  return firstIsDay ? "dmy" : "mdy";
}
