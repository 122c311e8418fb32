import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { newtonsPerUnit } from "../../../app/quantity/forceUnits.ts";

/** One reading as a format sees it. */
export type Shown = {
  /** The figure with a point and a minus where it is negative, in the format's unit and decimals. */
  readonly fig: string;
  /** The greatest figure since the last rest. */
  readonly top: string;
  readonly i: number;
  readonly ms: number;
  readonly moving: boolean;
  readonly over: boolean;
};

export type Format = {
  readonly name: string;
  readonly unit: ForceUnit;
  readonly decimals: number;
  readonly end: string;
  readonly line: (s: Shown) => string;
  /** Fields that must be asked for, beside the rate of lines without stamps. */
  readonly asks?: readonly string[];
  readonly stamped?: boolean;
  readonly rateHz?: number;
  /** Readings over capacity occur; the format says so in its own way. */
  readonly overs?: boolean;
  /** Every figure is the held maximum. */
  readonly held?: boolean;
  /** Text sent before each line. */
  readonly echo?: string;
  readonly checked?: boolean;
};

// Ways of writing, from trade knowledge. `fig` is "-12.34" or "12.34".
const pad = (text: string, width: number) => text.padStart(width);
const plus = (fig: string) => (fig.startsWith("-") ? fig : `+${fig}`);
const comma = (fig: string) => fig.replace(".", ",");
const zeros = (fig: string, width: number) =>
  `${fig.startsWith("-") ? "-" : "+"}${fig.replace("-", "").padStart(width, "0")}`;
const grouped = (fig: string, mark: string) => fig.replace(/\B(?=(\d{3})+(?!\d))/g, mark);
const detached = (fig: string, width: number) =>
  `${fig.startsWith("-") ? "-" : " "}${fig.replace("-", "").padStart(width)}`;
const hex = (n: number) => n.toString(16).toUpperCase().padStart(2, "0");
const xor = (text: string) => [...text].reduce((sum, c) => sum ^ c.charCodeAt(0), 0);
const sum = (text: string) => [...text].reduce((total, c) => total + c.charCodeAt(0), 0);
const digitSum = (text: string) => [...text].reduce((total, c) => total + (c >= "0" && c <= "9" ? Number(c) : 0), 0);
const clock = (ms: number) => new Date(ms + 36_000_000).toISOString().slice(11, 19);
const STX = "\u0002";
const ETX = "\u0003";

/** Invented line formats; none is taken from a product. */
export const formats: readonly Format[] = [
  { name: "number and unit, padded", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `${pad(s.fig, 8)} kN` },
  { name: "number and unit, not padded", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `${s.fig} kN` },
  { name: "number and unit without a blank", unit: "N", decimals: 0, end: "\n", line: (s) => `${s.fig}N` },
  { name: "sign always, zeros", unit: "daN", decimals: 1, end: "\r", line: (s) => `${zeros(s.fig, 6)}daN` },
  { name: "decimal comma", unit: "daN", decimals: 1, end: "\r\n", line: (s) => `${comma(plus(s.fig))} daN` },
  { name: "decimal comma, zeros, CR", unit: "kN", decimals: 3, end: "\r", line: (s) => `${comma(zeros(s.fig, 7))}kN` },
  { name: "bare number", unit: "kN", decimals: 2, end: "\r\n", line: (s) => s.fig, asks: ["unit"] },
  {
    name: "bare number of fixed width",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    line: (s) => zeros(s.fig, 6),
    asks: ["unit"],
  },
  {
    name: "bare number padded with blanks",
    unit: "lbf",
    decimals: 1,
    end: "\n",
    line: (s) => pad(s.fig, 9),
    asks: ["unit"],
  },
  { name: "bare decimal comma", unit: "kN", decimals: 2, end: "\r", line: (s) => comma(pad(s.fig, 7)), asks: ["unit"] },
  {
    name: "mass for force, kg",
    unit: "kgf",
    decimals: 1,
    end: "\r\n",
    line: (s) => `${pad(s.fig, 8)} kg`,
    asks: ["unit"],
  },
  {
    name: "mass for force, lb",
    unit: "lbf",
    decimals: 0,
    end: "\r\n",
    line: (s) => `${plus(s.fig)} lb`,
    asks: ["unit"],
  },
  {
    name: "status word before",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    line: (s) => `${s.moving ? "US" : "ST"},${zeros(s.fig, 6)},kN`,
  },
  {
    name: "status words and net",
    unit: "lbf",
    decimals: 0,
    end: "\r\n",
    line: (s) => `${s.moving ? "moving" : "still"};net;${zeros(s.fig, 6)};lbf`,
  },
  {
    name: "status word after",
    unit: "kN",
    decimals: 2,
    end: "\n",
    line: (s) => `${pad(s.fig, 7)} kN ${s.moving ? "UNSTABLE" : "STABLE"}`,
  },
  {
    name: "status letters",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    line: (s) => `${s.moving ? "U" : "S"} ${pad(s.fig, 7)} N`,
  },
  {
    name: "status in columns",
    unit: "daN",
    decimals: 0,
    end: "\r\n",
    line: (s) => `${(s.moving ? "MOTION" : "STEADY").padEnd(8)}${pad(s.fig, 7)} daN`,
  },
  {
    name: "overload as OL with unit",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    overs: true,
    line: (s) => `${s.over ? "     OL" : pad(s.fig, 7)} kN`,
  },
  {
    name: "overload as dashes",
    unit: "kN",
    decimals: 1,
    end: "\r\n",
    overs: true,
    line: (s) => `${s.over ? "------" : pad(s.fig, 6)} kN`,
  },
  {
    name: "overload as a whole line",
    unit: "N",
    decimals: 0,
    end: "\r",
    overs: true,
    line: (s) => (s.over ? "OVERLOAD" : `${s.fig} N`),
  },
  {
    name: "overload as status with clipped number",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    overs: true,
    line: (s) => `${s.over ? "OL" : s.moving ? "US" : "ST"},GS,${zeros(s.fig, 7)}N`,
  },
  {
    name: "held maximum word",
    unit: "kN",
    decimals: 1,
    end: "\n",
    held: true,
    line: (s) => `PEAK ${pad(s.top, 5)} kN`,
  },
  {
    name: "held maximum after",
    unit: "lbf",
    decimals: 0,
    end: "\r\n",
    held: true,
    line: (s) => `${pad(s.top, 6)} lbf MAX`,
  },
  {
    name: "live and maximum columns, one unit",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    line: (s) => `${pad(s.fig, 7)} ${pad(s.top, 7)} kN`,
  },
  {
    name: "live and maximum columns, labels",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    line: (s) => `F=${s.fig} N MAX=${s.top} N`,
  },
  {
    name: "maximum first, then live",
    unit: "kN",
    decimals: 2,
    end: "\n",
    line: (s) => `MAX ${pad(s.top, 6)} kN ACT ${pad(s.fig, 6)} kN`,
  },
  { name: "leading counter", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `${s.i + 17} ${pad(s.fig, 7)} kN` },
  {
    name: "leading counter with zeros that wraps",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    line: (s) => `${String((s.i + 900) % 1000).padStart(3, "0")};${plus(s.fig)};N`,
  },
  {
    name: "counter and bare number",
    unit: "kN",
    decimals: 3,
    end: "\r\n",
    line: (s) => `${s.i + 5},${s.fig}`,
    asks: ["unit"],
  },
  {
    name: "milliseconds with zeros",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    stamped: true,
    rateHz: 50,
    line: (s) => `${String(s.ms).padStart(7, "0")} ${zeros(s.fig, 6)} N`,
  },
  {
    name: "milliseconds, bare number",
    unit: "kN",
    decimals: 2,
    end: "\n",
    stamped: true,
    rateHz: 50,
    line: (s) => `${s.ms};${s.fig}`,
    asks: ["unit"],
  },
  {
    name: "seconds with decimals",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    stamped: true,
    rateHz: 50,
    line: (s) => `${(s.ms / 1000).toFixed(3)} s ${pad(s.fig, 7)} kN`,
  },
  {
    name: "milliseconds that wrap",
    unit: "daN",
    decimals: 0,
    end: "\r\n",
    stamped: true,
    rateHz: 50,
    line: (s) => `${String((s.ms + 97_000) % 100_000).padStart(5, "0")} ${zeros(s.fig, 5)} daN`,
  },
  {
    name: "time of day",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    stamped: true,
    rateHz: 50,
    line: (s) => `${clock(s.ms)} ${pad(s.fig, 7)} kN`,
  },
  {
    name: "date and time with fraction",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    stamped: true,
    rateHz: 50,
    line: (s) => `2031-05-04 ${clock(s.ms)}.${String(s.ms % 1000).padStart(3, "0")} ${plus(s.fig)} kN`,
  },
  { name: "STX and ETX", unit: "N", decimals: 0, end: "\r\n", line: (s) => `${STX}${pad(s.fig, 8)}N${ETX}` },
  { name: "STX, ETX as the end", unit: "kN", decimals: 2, end: ETX, line: (s) => `${STX}${zeros(s.fig, 6)} kN` },
  {
    name: "XOR after a star",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    checked: true,
    line: (s) => `${zeros(s.fig, 6)} N*${hex(xor(`${zeros(s.fig, 6)} N`))}`,
  },
  {
    name: "XOR between STX and star",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    stamped: true,
    rateHz: 50,
    checked: true,
    line: (s) =>
      `${STX}${String(s.ms).padStart(7, "0")} ${zeros(s.fig, 6)} N*${hex(xor(`${String(s.ms).padStart(7, "0")} ${zeros(s.fig, 6)} N`))}`,
  },
  {
    name: "XOR with STX and separator",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    checked: true,
    line: (s) => `${STX}${pad(s.fig, 7)} kN,${hex(xor(`${STX}${pad(s.fig, 7)} kN,`))}`,
  },
  {
    name: "XOR behind ETX, nothing behind it",
    unit: "kN",
    decimals: 2,
    end: "",
    checked: true,
    line: (s) => `${STX}${pad(s.fig, 7)} kN${ETX}${hex(xor(`${pad(s.fig, 7)} kN${ETX}`))}`,
  },
  {
    name: "XOR behind ETX",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    checked: true,
    line: (s) => `${STX}${plus(s.fig)}kN${ETX}${hex(xor(`${plus(s.fig)}kN${ETX}`))}`,
  },
  {
    name: "sum modulo 256",
    unit: "daN",
    decimals: 1,
    end: "\r\n",
    checked: true,
    line: (s) => `${pad(s.fig, 8)} daN ${hex(sum(`${pad(s.fig, 8)} daN `) & 255)}`,
  },
  {
    name: "sum modulo 256 of the number only",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    checked: true,
    line: (s) => `F ${plus(s.fig)} kN;${hex(sum(plus(s.fig)) & 255).toLowerCase()}`,
  },
  {
    name: "sum modulo 256, decimal",
    unit: "N",
    decimals: 0,
    end: "\r",
    checked: true,
    line: (s) => `${plus(s.fig)} N ${String(sum(`${plus(s.fig)} N`) & 255).padStart(3, "0")}`,
  },
  {
    name: "check digit, bytes modulo 10",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    checked: true,
    line: (s) => `${zeros(s.fig, 6)}N${sum(`${zeros(s.fig, 6)}N`) % 10}`,
  },
  {
    name: "check digit, digits modulo 10, bare",
    unit: "N",
    decimals: 0,
    end: "\r\n",
    checked: true,
    asks: ["unit"],
    line: (s) => `${zeros(s.fig, 6)}${digitSum(s.fig) % 10}`,
  },
  { name: "thousands blanks", unit: "N", decimals: 0, end: "\r\n", line: (s) => `${grouped(s.fig, " ")} N` },
  {
    name: "thousands blanks, padded, comma",
    unit: "N",
    decimals: 1,
    end: "\r\n",
    line: (s) => `${pad(grouped(s.fig.slice(0, -2), " ") + comma(s.fig.slice(-2)), 10)} N`,
  },
  { name: "thousands commas", unit: "lbf", decimals: 0, end: "\n", line: (s) => `${pad(grouped(s.fig, ","), 9)} lbf` },
  { name: "sign apart from the digits", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `${detached(s.fig, 7)} kN` },
  {
    name: "sign behind the digits",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    line: (s) => `${pad(s.fig.replace("-", ""), 6)}${s.fig.startsWith("-") ? "-" : " "} kN`,
  },
  { name: "unit before the number", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `kN ${plus(s.fig)}` },
  { name: "unit before, padded", unit: "lbf", decimals: 0, end: "\n", line: (s) => `lbf${pad(s.fig, 8)}` },
  { name: "unit in brackets", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `${pad(s.fig, 7)} [kN]` },
  { name: "echoed request", unit: "kN", decimals: 2, end: "\r\n", echo: "READ?", line: (s) => `${pad(s.fig, 7)} kN` },
  {
    name: "echoed request with a digit",
    unit: "N",
    decimals: 0,
    end: "\r",
    echo: "M1",
    line: (s) => `${plus(s.fig)} N`,
  },
  { name: "exponent", unit: "N", decimals: 0, end: "\r\n", line: (s) => `${plus(Number(s.fig).toExponential(4))} N` },
  { name: "label and equals sign", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `F = ${pad(s.fig, 6)} kN` },
  { name: "channel name", unit: "kip", decimals: 3, end: "\r\n", line: (s) => `CH1: ${s.fig} kip` },
  {
    name: "a further number, temperature",
    unit: "kN",
    decimals: 2,
    end: "\r\n",
    line: (s) => `${pad(s.fig, 7)} kN ${(21.4 + ((s.i * 7) % 5) / 10).toFixed(1)} C`,
  },
  { name: "battery per cent", unit: "N", decimals: 0, end: "\r\n", line: (s) => `${pad(s.fig, 7)} N 87%` },
  { name: "tabs", unit: "kN", decimals: 2, end: "\n", line: (s) => `${s.i}\t${s.fig}\tkN` },
  { name: "left in its column", unit: "kN", decimals: 2, end: "\r\n", line: (s) => `${s.fig.padEnd(8)}kN` },
  {
    name: "no zero before the point",
    unit: "kN",
    decimals: 3,
    end: "\r\n",
    line: (s) => `${s.fig.replace(/^(-?)0\./, "$1.")} kN`,
  },
  { name: "capital letters for the unit", unit: "kN", decimals: 1, end: "\r\n", line: (s) => `${pad(s.fig, 8)}KN` },
  { name: "kgf by its old name", unit: "kgf", decimals: 0, end: "\r\n", line: (s) => `${pad(s.fig, 6)} kp` },
];

/** Figures of a quiet gauge and some clampings: deterministic, with noise of a step or two and small negative zeros. */
export function shownReadings(format: Format, count: number, seed = 1): Shown[] {
  const random = lcg(seed);
  const perUnit = newtonsPerUnit[format.unit];
  const show = (forceN: number) => (forceN / perUnit).toFixed(format.decimals).replace(/^-(0\.?0*)$/, "$1");
  let top = 0;
  return Array.from({ length: count }, (_, i) => {
    const tS = i / 50;
    const phase = tS % 4;
    const load = phase < 1.2 ? 0 : phase < 3.2 ? 17_600 * Math.min(1, (phase - 1.2) / 0.08) : 0;
    const forceN = load + (random() - 0.55) * 40 + (load > 17_000 ? 300 * Math.exp(-(phase - 1.28) * 30) : 0);
    const over = format.overs === true && phase > 1.3 && phase < 1.45;
    if (i % 200 === 0) top = forceN; // cleared at rest, once
    top = Math.max(top, forceN);
    return { fig: show(forceN), top: show(top), i, ms: i * 20, moving: phase > 1.18 && phase < 1.4, over };
  });
}

/** The stream of a format, whole. */
export function streamOf(format: Format, readings: readonly Shown[]): string {
  return readings
    .map((s) => (format.echo === undefined ? "" : format.echo + format.end) + format.line(s) + format.end)
    .join("");
}

export const bytesOfText = (text: string): Uint8Array => Uint8Array.from(text, (c) => c.charCodeAt(0));

/** A small linear congruential generator (from memory, the constants of Numerical Recipes): repeatable, good enough for noise. */
export function lcg(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}
