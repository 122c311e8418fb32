import { fromNewtons } from "../../app/quantity/forceUnits.ts";
import type { StoredReading } from "./GaugeMemory.ts";

/** Writes the whole memory as the lines a gauge sends, ends included. */
export type DumpFormat = (readings: readonly StoredReading[], decimals: number) => readonly string[];

/**
 * Three ways to send a memory, invented from what the trade knows; none is a product's. They differ in what makes
 * reading them hard: order of day and month, unit stated once, records of several lines, a count to check or none.
 */
export const dumpFormats = {
  /** A count first and last, one reading a line, ISO dates, location where there is one. */
  list(readings, decimals) {
    const lines = readings.map((r) => {
      const { date, time } = partsOf(r.clockMs);
      const where = r.location === undefined ? "" : `L${two(r.location)}`;
      return `${String(r.number).padStart(4, "0")};${figure(r, decimals)};${r.unit};${date.join("-")};${time.join(":")};${where};${r.held ? "MAX" : "ACT"}\r\n`;
    });
    return [`COUNT ${readings.length}\r\n`, ...lines, `END ${readings.length}\r\n`];
  },
  /** Columns, decimal comma, day first with a year of two digits, the unit said once, a checksum on each line. */
  columns(readings, decimals) {
    const unit = readings[0]?.unit ?? "kN";
    const lines = readings.map((r) => {
      const { date, time } = partsOf(r.clockMs);
      const [year, month, day] = date;
      const shown = fromNewtons(r.forceN, unit).toFixed(decimals).replace(".", ",").padStart(9);
      const body = `${String(r.number).padStart(3)} ${shown} ${day}.${month}.${year.slice(2)} ${time[0]}:${time[1]} ${two(r.location ?? 0)}`;
      return `${body}*${xorOf(body)}\r\n`;
    });
    return [`Nr  Wert ${unit}  Datum  Zeit  Ort\r\n`, ...lines, "\r\n"];
  },
  /** A block of lines for each reading, month first, twelve hours; no count anywhere. */
  blocks(readings, decimals) {
    return readings.flatMap((r) => {
      const { date, time } = partsOf(r.clockMs);
      const [year, month, day] = date;
      const hour = Number(time[0]);
      const clock = `${two(hour % 12 || 12)}:${time[1]}:${time[2]} ${hour < 12 ? "AM" : "PM"}`;
      const where = r.location === undefined ? [] : [`Location ${r.location}\n`];
      return [
        `No. ${r.number}\n`,
        `${r.held ? "Peak" : "Value"} ${figure(r, decimals)} ${r.unit}\n`,
        `${month}/${day}/${year} ${clock}\n`,
        ...where,
        "\n",
      ];
    });
  },
} satisfies Record<string, DumpFormat>;

export type DumpFormatName = keyof typeof dumpFormats;
export const dumpFormatNames = Object.keys(dumpFormats) as DumpFormatName[]; // keys of the literal above

/** What the gauge's clock shows when it is asked. */
export function clockLine(clockMs: number): string {
  const { date, time } = partsOf(clockMs);
  return `CLOCK ${date.join("-")} ${time.join(":")}\r\n`;
}

type Three = readonly [string, string, string];

function partsOf(ms: number): { readonly date: Three; readonly time: Three } {
  const [date = "", rest = ""] = new Date(ms).toISOString().split("T");
  // An ISO instant has three parts on both sides.
  return { date: date.split("-") as unknown as Three, time: rest.slice(0, 8).split(":") as unknown as Three };
}

const two = (n: number) => String(n).padStart(2, "0");
const figure = (r: StoredReading, decimals: number) => fromNewtons(r.forceN, r.unit).toFixed(decimals);

function xorOf(text: string): string {
  let sum = 0;
  for (let i = 0; i < text.length; i += 1) sum ^= text.charCodeAt(i);
  return sum.toString(16).toUpperCase().padStart(2, "0");
}
