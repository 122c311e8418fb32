import * as fc from "fast-check";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import type { Format, Shown } from "./formats.ts";

/** The choices a maker of a gauge has, each drawn at random. */
type Choices = {
  readonly unit: ForceUnit;
  readonly decimals: number;
  readonly mark: "." | ",";
  readonly sign: "minus" | "always" | "column";
  readonly fill: "none" | "blanks" | "zeros";
  readonly unitPlace: "behind" | "attached" | "before" | "none";
  readonly lead: "none" | "status" | "counter" | "filledCounter" | "ms" | "seconds" | "label";
  readonly trail: "none" | "status";
  readonly between: " " | ";" | "\t";
  readonly frame: "none" | "stx" | "stxEtx";
  readonly check: "none" | "xor" | "sum" | "digit";
  readonly checkFrom: "start" | "afterStx";
  readonly end: "\r\n" | "\n" | "\r";
};

const choices: fc.Arbitrary<Choices> = fc.record({
  unit: fc.constantFrom<ForceUnit>("N", "daN", "kN", "lbf", "kip", "kgf"),
  decimals: fc.integer({ min: 0, max: 3 }),
  mark: fc.constantFrom(".", ","),
  sign: fc.constantFrom("minus", "always", "column"),
  fill: fc.constantFrom("none", "blanks", "zeros"),
  unitPlace: fc.constantFrom("behind", "attached", "before", "none"),
  lead: fc.constantFrom("none", "status", "counter", "filledCounter", "ms", "seconds", "label"),
  trail: fc.constantFrom("none", "status"),
  between: fc.constantFrom(" ", ";", "\t"),
  frame: fc.constantFrom("none", "stx", "stxEtx"),
  check: fc.constantFrom("none", "xor", "sum", "digit"),
  checkFrom: fc.constantFrom("start", "afterStx"),
  end: fc.constantFrom("\r\n", "\n", "\r"),
});

function numberText(c: Choices, s: Shown): string {
  const digits = s.fig.replace("-", "").replace(".", c.mark);
  const negative = s.fig.startsWith("-");
  const sign = negative ? "-" : c.sign === "always" ? "+" : c.sign === "column" ? " " : "";
  const width = 5 + (c.decimals > 0 ? c.decimals + 1 : 0) + 2;
  if (c.fill === "zeros") return `${sign === "" ? "" : sign}${digits.padStart(width - 1, "0")}`;
  return c.fill === "blanks" ? `${sign.trim()}${digits}`.padStart(width + 1) : `${sign}${digits}`;
}

function leadText(c: Choices, s: Shown): string {
  const place: Record<Choices["lead"], string> = {
    none: "",
    status: s.moving ? "US" : "ST",
    counter: `${s.i + 3}`,
    filledCounter: String((s.i + 12) % 10_000).padStart(4, "0"),
    ms: String(s.ms + 40).padStart(6, "0"),
    seconds: (s.ms / 1000).toFixed(2).replace(".", c.mark),
    label: "F",
  };
  return place[c.lead] === "" ? "" : place[c.lead] + c.between;
}

const codes = (text: string) => [...text].map((character) => character.charCodeAt(0));

function checkText(c: Choices, text: string): string {
  const span = codes(c.checkFrom === "start" ? text : text.replace("\u0002", ""));
  const xor = span.reduce((sum, code) => sum ^ code, 0);
  const sum = span.reduce((total, code) => total + code, 0);
  const hex = (value: number) => value.toString(16).toUpperCase().padStart(2, "0");
  return { none: "", xor: `*${hex(xor)}`, sum: `;${hex(sum % 256)}`, digit: ` ${sum % 10}` }[c.check];
}

function lineText(c: Choices, s: Shown): string {
  const number = numberText(c, s);
  const figure = {
    behind: `${number} ${c.unit}`,
    attached: `${number}${c.unit}`,
    before: `${c.unit} ${number}`,
    none: number,
  }[c.unitPlace];
  const text = leadText(c, s) + figure + (c.trail === "status" ? `${c.between}${s.moving ? "MOVING" : "STILL"}` : "");
  const framed = (c.frame === "none" ? "" : "\u0002") + text;
  return framed + checkText(c, framed) + (c.frame === "stxEtx" ? "\u0003" : "");
}

/** What the choices leave unreadable for anyone: a comma that may be a separator, or a filled sign column at the line's start. */
function sensible(c: Choices): boolean {
  // A counter and a bare number of whole digits may be either way round for a person, too.
  if (c.unitPlace === "none" && (c.decimals === 0 || c.lead === "label")) return false;
  return !(c.check === "digit" && c.unitPlace === "none" && c.trail === "none");
}

/** Formats drawn at random, such that a person with the lines before him could tell what is what. */
export const randomFormat: fc.Arbitrary<Format> = choices.filter(sensible).map((c): Format => {
  const stamped = c.lead === "ms" || c.lead === "seconds";
  return {
    name: JSON.stringify(c),
    unit: c.unit,
    decimals: c.decimals,
    end: c.end,
    line: (s) => lineText(c, s),
    asks: c.unitPlace === "none" ? ["unit"] : [],
    stamped,
    rateHz: stamped ? 50 : undefined,
    checked: c.check !== "none",
  };
});
