import { isOverloadWord } from "../../gauge/learn/vocabulary.ts";
import { type ForceUnit, toNewtons } from "../../quantity/forceUnits.ts";
import { parseDecimal } from "../../quantity/parseForce.ts";
import { parseForceUnit } from "../../quantity/parseForceUnit.ts";
import type { DumpFormat } from "./DumpFormat.ts";
import type { DumpRecord } from "./DumpReading.ts";
import { parseDate, parseStamp, parseTime } from "./parseStamp.ts";

/**
 * One record from its cells.
 * @returns  undefined: a cell does not hold what its field is, so the line is something else
 */
export function readRecord(
  cells: readonly string[],
  format: DumpFormat,
  line: number,
  raw: string,
): DumpRecord | undefined {
  const cell = (field: string) => {
    const at = format.fields.findIndex((f) => f.field === field);
    return at < 0 || cells[at] === "" ? undefined : cells[at];
  };
  const forceText = cell("force");
  const number = cell("number");
  if (forceText === undefined || (number !== undefined && !/^[A-Za-z#]*\d+[.:)]?$/.test(number))) return undefined;
  const force = readForce(forceText, cell("unit"), format);
  if (force === undefined) return undefined;
  const when = readWhen(cell, format);
  if (when === undefined) return undefined;
  const words = format.fields.find((f) => f.field === "kind");
  const word = cell("kind");
  const kind = words === undefined || word === undefined ? undefined : words.words[word];
  return {
    line,
    raw: raw.slice(0, 500),
    number,
    figure: [forceText, cell("unit")].filter((t) => t !== undefined).join(" "),
    ...force,
    ...when,
    location: plainLocation(cell("location")),
    kind: kind === "held" || kind === "live" ? kind : undefined,
  };
}

/** 007, L07 and 7 are one place; 0 is none. */
function plainLocation(text: string | undefined): string | undefined {
  const plain = text?.replace(/^[A-Za-z]{0,2}0*(\d+)$/, "$1");
  return plain === "0" ? undefined : plain;
}

type Force = Pick<DumpRecord, "valueN" | "unit" | "refused">;

function readForce(text: string, unitCell: string | undefined, format: DumpFormat): Force | undefined {
  if (isOverloadWord(text)) return { valueN: undefined, unit: undefined, refused: "overload" };
  const parts = /^([+-]?[\d.,' ]*\d)\s*([^\d\s].*)?$/.exec(text);
  const value = parts === null ? undefined : parseDecimal(parts[1]!);
  if (value === undefined) return undefined;
  const unitText = unitCell ?? parts![2];
  if (unitText === undefined) return valued(value, format.unit);
  const meaning = parseForceUnit(unitText);
  if (meaning.kind === "torque") return { valueN: undefined, unit: undefined, refused: "torque" };
  if (meaning.kind === "force") return valued(value, meaning.unit);
  if (meaning.kind === "mass" && format.massMeansForce === true) return valued(value, meaning.unit);
  return { valueN: undefined, unit: undefined, refused: "unreadable" };
}

const valued = (value: number, unit: ForceUnit | undefined): Force =>
  unit === undefined
    ? { valueN: undefined, unit: undefined, refused: "unreadable" }
    : { valueN: toNewtons(value, unit), unit, refused: undefined };

type When = Pick<DumpRecord, "stamp" | "gaugeMs" | "badDate">;

/** Undefined: a cell that is to be a date or a time holds neither, so the line is no record. A date that is none of the calendar is kept and said. */
function readWhen(cell: (field: string) => string | undefined, { fields }: DumpFormat): When | undefined {
  const dated = fields.find((f) => f.field === "date" || f.field === "stamp");
  const [stampText, dateText, timeText] = [cell("stamp"), cell("date"), cell("time")];
  const texts = [stampText, dateText, timeText].filter((t) => t !== undefined);
  if (texts.length === 0 || dated === undefined || !("order" in dated))
    return { stamp: texts[0], gaugeMs: undefined, badDate: false };
  if (!texts.every((t) => /^[\d:./\-,TZ apmAPM]+$/.test(t))) return undefined;
  const whole = stampText === undefined ? undefined : parseStamp(stampText, dated.order);
  const date = dateText === undefined ? undefined : parseDate(dateText, dated.order);
  const time = timeText === undefined ? 0 : parseTime(timeText);
  const gaugeMs = whole ?? (date === undefined || time === undefined ? undefined : date + time);
  return { stamp: texts.join(" "), gaugeMs, badDate: gaugeMs === undefined };
}
