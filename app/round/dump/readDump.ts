import { checksumOf } from "../../gauge/checksums.ts";
import { blockCells } from "./blockCells.ts";
import type { DumpFormat } from "./DumpFormat.ts";
import { type DumpReading, type DumpRecord, MOST_RECORDS } from "./DumpReading.ts";
import { dumpLines } from "./dumpLines.ts";
import { hasGaps } from "./hasGaps.ts";
import { parseStamp } from "./parseStamp.ts";
import { readRecord } from "./readRecord.ts";
import { splitCells } from "./splitCells.ts";

/**
 * A memory or a file, read by its format. A line with as many cells as the format has fields, and a force where it is to
 * be, is a record; a line whose check does not agree is rejected; everything else is passed over, so that live readings
 * between the records and closing lines do no harm.
 * @param text  as it came, one character a byte where it came over a port
 */
export function readDump(text: string, format: DumpFormat): DumpReading {
  const records: DumpRecord[] = [];
  const rejected: DumpReading["rejected"][number][] = [];
  let passedOver = 0;
  let announced: number | undefined;
  let gaugeNowMs: number | undefined;
  let tooMany = false;
  const { lines, cut } = dumpLines(text, format.separator === "lines");
  for (const { line, raw } of lines) {
    const body = checked(raw, format);
    if (body === undefined) {
      if (looksLikeRecord(raw, format)) rejected.push({ line, raw, why: "checksum" });
      else passedOver += 1;
      continue;
    }
    const count = format.countAfter?.find((begin) => body.startsWith(begin));
    if (count !== undefined) {
      announced = Math.max(announced ?? 0, wholeNumber(body.slice(count.length)) ?? 0);
      continue;
    }
    if (format.clockAfter !== undefined && body.startsWith(format.clockAfter.text)) {
      gaugeNowMs = parseStamp(body.slice(format.clockAfter.text.length), format.clockAfter.order) ?? gaugeNowMs;
      continue;
    }
    const cells = cellsOf(body, format);
    const record = cells.length === format.fields.length ? readRecord(cells, format, line, raw) : undefined;
    if (record === undefined) {
      if (looksLikeRecord(body, format)) rejected.push({ line, raw, why: "fields" });
      else passedOver += 1;
    } else if (records.length === MOST_RECORDS) tooMany = true;
    else records.push(record);
  }
  const short =
    (announced !== undefined && announced !== records.length) || hasGaps(records.map(({ number }) => number));
  return {
    records,
    rejected,
    passedOver,
    announced,
    gaugeNowMs,
    tooMany,
    incomplete: short || rejected.length > 0 || cut,
  };
}

const cellsOf = (body: string, format: DumpFormat) =>
  format.separator === "lines" ? blockCells(body, format.labels ?? []) : splitCells(body, format.separator);

/** Nearly as many cells as a record has, and a time in one of them. */
function looksLikeRecord(body: string, format: DumpFormat): boolean {
  const cells = cellsOf(body, format).filter((cell) => cell !== "");
  return cells.length > 1 && cells.length >= format.fields.length - 2 && /\d:\d\d/.test(body);
}

/** The line without its check; undefined where that does not agree. */
function checked(raw: string, { checksum }: DumpFormat): string | undefined {
  if (checksum === undefined) return raw;
  const at = raw.lastIndexOf(checksum.mark);
  const digits = at < 0 ? "" : raw.slice(at + checksum.mark.length);
  if (!/^[0-9A-Fa-f]{2}$/.test(digits)) return undefined;
  const bytes = Uint8Array.from(raw.slice(0, at), (c) => c.charCodeAt(0) & 0xff);
  return checksumOf(checksum.method, bytes, 0, bytes.length) === Number.parseInt(digits, 16)
    ? raw.slice(0, at)
    : undefined;
}

function wholeNumber(text: string): number | undefined {
  const found = /^\D{0,3}(\d{1,6})\D*$/.exec(text);
  return found === null ? undefined : Number(found[1]);
}
