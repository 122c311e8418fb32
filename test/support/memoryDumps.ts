import { clockLine, dumpFormats as simulated } from "../../simulator/memory/dumpFormats.ts";
import type { StoredReading } from "../../simulator/memory/GaugeMemory.ts";

/** Writes a memory as lines, their ends included. */
export type WriteDump = (readings: readonly StoredReading[], clockMs: number) => readonly string[];

const two = (n: number | string) => String(n).padStart(2, "0");
const iso = (ms: number) => new Date(ms).toISOString().slice(0, 19); // the gauge's own time, counted as if in UTC
const dmy = (ms: number) => iso(ms).slice(0, 10).split("-").reverse().join(".");

function checked(body: string): string {
  let sum = 0;
  for (const c of body) sum ^= c.charCodeAt(0);
  return `${body}*${sum.toString(16).toUpperCase().padStart(2, "0")}\r\n`;
}

/** Memories as gauges may send them: the simulator's three, and three more written here, all invented. */
export const memoryDumps = {
  list: (readings, clockMs) => [clockLine(clockMs), ...simulated.list(readings, 2)],
  columns: (readings) => simulated.columns(readings, 2),
  blocks: (readings) => simulated.blocks(readings, 2),
  /** Cells with semicolons, day first, decimal comma; says its clock before and its count after. */
  table: (readings, clockMs) => [
    `CLOCK ${dmy(clockMs)} ${iso(clockMs).slice(11)}\r\n`,
    ...readings.map(({ forceN, clockMs: at, location, held }, i) => {
      const figure = (forceN / 1000).toFixed(2).replace(".", ",");
      const place = String(location ?? 0).padStart(3, "0");
      return `${i + 1};${dmy(at)};${iso(at).slice(11)};${place};${held ? "MAX" : "LIVE"};${figure};kN\r\n`;
    }),
    `COUNT ${readings.length}\r\n`,
  ],
  /** Commas, date and time in one cell, a check on each line; no location. */
  checked: (readings, clockMs) => [
    checked(`NOW ${iso(clockMs)}`),
    ...readings.map((r, i) => checked(`R${two(i + 1)},${iso(r.clockMs)},${(r.forceN / 10).toFixed(0)},daN`)),
    checked(`RECORDS ${readings.length}`),
  ],
  /** Blanks, month first, two digits of the year, minutes only, the newest first; neither clock nor count. */
  newestFirst: (readings) =>
    readings
      .map(({ forceN, clockMs: at, held }, i) => {
        const [year, month, day] = iso(at).slice(0, 10).split("-");
        const figure = (forceN / 1000).toFixed(2).padStart(8);
        const date = `${month}/${day}/${year!.slice(2)}`;
        return `${String(i + 1).padStart(4)} ${date} ${iso(at).slice(11, 16)} ${held ? "PEAK" : "LIVE"} ${figure} kN\r\n`;
      })
      .reverse(),
} satisfies Record<string, WriteDump>;
