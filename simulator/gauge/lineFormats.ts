import { type ForceUnit, fromNewtons } from "../../app/quantity/forceUnits.ts";

/** One reading as a gauge would have it in front of its output. */
export type Sample = {
  /** What the gauge indicates, newtons. */
  readonly forceN: number;
  /** The greatest since it was last cleared, newtons. */
  readonly heldN: number;
  readonly overload: boolean;
  readonly moving: boolean;
  /** Readings since it was switched on. */
  readonly count: number;
  readonly tMs: number;
};

/** Writes one line, its end included. */
export type LineFormat = (sample: Sample, unit: ForceUnit, decimals: number) => string;

/**
 * The lines a simulated gauge can send. Invented from what the trade knows of gauges' output; none is a product's.
 * Written on its own, not through the reader's code, so that the two check each other.
 */
export const lineFormats = {
  numberUnit: (s, unit, d) => `${s.overload ? "OL".padStart(9) : padded(s.forceN, unit, d, 9)} ${unit}\r\n`,
  bare: (s, unit, d) => `${s.overload ? "------" : padded(s.forceN, unit, d, 10)}\r\n`,
  status: (s, unit, d) => `${word(s)};net;${s.overload ? "+999999" : signed(s.forceN, unit, d, 6)};${unit}\r\n`,
  decimalComma: (s, unit, d) =>
    s.overload ? `OL ${unit}\r` : `${signed(s.forceN, unit, d, 6).replace(".", ",")}${unit}\r`,
  counter: (s, unit, d) => `${s.count % 1_000_000} ${over(s, unit, d)} ${unit}\n`,
  milliseconds: (s, unit, d) =>
    `${String(Math.round(s.tMs) % 10_000_000).padStart(7, "0")} ${over(s, unit, d)} ${unit}\r\n`,
  checksum(s, unit, d) {
    const body = `${String(Math.round(s.tMs) % 10_000_000).padStart(7, "0")} ${over(s, unit, d)} ${unit}`;
    return `\x02${body}*${xorHex(body)}\x03\r\n`;
  },
  heldMaximum: (s, unit, d) => `MAX ${s.overload ? "OL".padStart(9) : padded(s.heldN, unit, d, 9)} ${unit}\r\n`,
} satisfies Record<string, LineFormat>;

export type LineFormatName = keyof typeof lineFormats;

/** Every name, for help texts and tests. */
export const lineFormatNames = Object.keys(lineFormats) as LineFormatName[]; // keys of the literal above

/** Decimals that give steps of about a three-thousandth of the capacity, as gauges usually show (common practice, no source). */
export function decimalsFor(capacityN: number, unit: ForceUnit): number {
  const step = fromNewtons(capacityN, unit) / 3_000;
  return Math.min(6, Math.max(0, Math.ceil(-Math.log10(step))));
}

const figure = (forceN: number, unit: ForceUnit, decimals: number) => fromNewtons(forceN, unit).toFixed(decimals);

function padded(forceN: number, unit: ForceUnit, decimals: number, width: number): string {
  return figure(forceN, unit, decimals).padStart(width);
}

function signed(forceN: number, unit: ForceUnit, decimals: number, digits: number): string {
  const text = figure(Math.abs(forceN), unit, decimals);
  return `${forceN < 0 ? "-" : "+"}${text.padStart(decimals === 0 ? digits : digits + 1, "0")}`;
}

function over(s: Sample, unit: ForceUnit, decimals: number): string {
  return s.overload ? "OL" : signed(s.forceN, unit, decimals, 6);
}

function word(s: Sample): string {
  if (s.overload) return "over";
  return s.moving ? "moving" : "still";
}

function xorHex(text: string): string {
  let sum = 0;
  for (let i = 0; i < text.length; i += 1) sum ^= text.charCodeAt(i);
  return sum.toString(16).toUpperCase().padStart(2, "0");
}
