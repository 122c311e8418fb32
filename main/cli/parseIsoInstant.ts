const pattern =
  /^(\d{4})-(\d{2})-(\d{2})(?:[T ](\d{2}):(\d{2})(?::(\d{2})(?:[.,](\d{1,9}))?)?\s*(Z|[+-]\d{2}(?::?\d{2})?)?)?$/i;

/**
 * Milliseconds since 1970 of an ISO 8601 date or date and time ("2031-04-30", "2031-04-30T06:15+02:00"). Without an
 * offset it is taken as UTC, so that a table reads the same on every machine.
 * @returns  undefined for anything else, a 31st of April too
 */
export function parseIsoInstant(text: string): number | undefined {
  const parts = pattern.exec(text.trim());
  if (parts === null) return undefined;
  const [year, month, day, hour, minute, second] = parts.slice(1, 7).map((part) => Number(part ?? 0));
  const ms = Date.UTC(year!, month! - 1, day!, hour, minute, second) + Math.round(Number(`0.${parts[7] ?? 0}`) * 1000);
  const date = new Date(ms);
  const held = date.getUTCMonth() === month! - 1 && date.getUTCDate() === day!;
  if (!held || hour! > 23 || minute! > 59 || second! > 59) return undefined;
  return ms - offsetMs(parts[8]);
}

function offsetMs(text: string | undefined): number {
  const parts = /^([+-])(\d{2}):?(\d{2})?$/.exec(text ?? "");
  if (parts === null) return 0;
  const minutes = Number(parts[2]) * 60 + Number(parts[3] ?? 0);
  return (parts[1] === "-" ? -1 : 1) * minutes * 60_000;
}
