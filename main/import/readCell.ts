import type { ImportProblem } from "../../app/contract/importViews.ts";
import { type ForceUnit, toNewtons } from "../../app/quantity/forceUnits.ts";
import { parseDecimal, parseForce } from "../../app/quantity/parseForce.ts";
import { parseForceUnit } from "../../app/quantity/parseForceUnit.ts";
import type { FieldForm } from "./fields.ts";

type Fault = { readonly code: ImportProblem["code"]; readonly message: string };
export type CellValue = { readonly value: string | number } | Fault;

/**
 * Reads one cell that is not empty, by the form of its field. A force takes the unit that stands in the cell, else `unit`.
 * @param percent  the head names percent: a share of 0.5 means 0.005
 */
export function readCell(
  text: string,
  form: FieldForm,
  { unit, percent }: { readonly unit: ForceUnit | undefined; readonly percent: boolean },
): CellValue {
  switch (form) {
    case "text":
      return { value: text };
    case "force":
      return forceOf(text, unit);
    case "unit":
      return unitOf(text);
    case "date":
      return dateOf(text);
    case "day":
    case "time":
      return { value: text }; // read where the order of the whole column is known
    case "share":
      return shareOf(text, percent);
    case "number":
    case "whole": {
      const value = parseDecimal(text);
      const whole = form === "number" || Number.isInteger(value);
      return value === undefined || !whole ? noNumber(text, whole ? "a number" : "a whole number") : { value };
    }
  }
}

const noNumber = (text: string, what: string): Fault => ({
  code: "noNumber",
  message: `"${short(text)}" is not ${what}`,
});

function forceOf(text: string, unit: ForceUnit | undefined): CellValue {
  const parsed = parseForce(text);
  switch (parsed.kind) {
    case "force":
      return { value: parsed.forceN };
    case "bare":
      return unit === undefined
        ? { code: "unitWanted", message: `${short(text)} has no unit, and neither has the head` }
        : { value: toNewtons(parsed.value, unit) };
    case "torque":
    case "mass":
      return { code: parsed.kind, message: parsed.reason };
    case "unreadable":
      return { code: "noForce", message: `"${short(text)}" is not a force` };
  }
}

function unitOf(text: string): CellValue {
  const meaning = parseForceUnit(text);
  if (meaning.kind === "force") return { value: meaning.unit };
  if (meaning.kind === "torque") return { code: "torque", message: meaning.reason };
  if (meaning.kind === "mass")
    return { code: "mass", message: `${short(text)} is a mass; write ${meaning.unit} where a force is meant` };
  return { code: "noForce", message: `"${short(text)}" is no unit of force` };
}

function shareOf(text: string, percent: boolean): CellValue {
  const bare = text.replace(/\s*%\s*$/, "");
  const value = parseDecimal(bare);
  if (value === undefined) return noNumber(text, "a share");
  return { value: percent || bare !== text ? value / 100 : value };
}

/** Year first, or the German way with points; with slashes nobody can tell day from month. */
function dateOf(text: string): CellValue {
  const iso = /^(\d{4})-(\d\d?)-(\d\d?)(?:[T ]00:00(?::00)?)?$/.exec(text);
  const german = /^(\d\d?)\.(\d\d?)\.(\d{4})$/.exec(text);
  const [year, month, day] = iso?.slice(1) ?? german?.slice(1).reverse() ?? [];
  const date = `${year}-${month?.padStart(2, "0")}-${day?.padStart(2, "0")}`;
  const there = year !== undefined && !Number.isNaN(Date.parse(date)) && new Date(date).toISOString().startsWith(date);
  if (there) return { value: date };
  return { code: "noDate", message: `"${short(text)}" is no date here; write 2026-04-03 or 03.04.2026` };
}

const short = (text: string) => (text.length > 40 ? `${text.slice(0, 40)}…` : text);
