import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";

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
export const pad = (text: string, width: number) => text.padStart(width);
export const plus = (fig: string) => (fig.startsWith("-") ? fig : `+${fig}`);
export const comma = (fig: string) => fig.replace(".", ",");
export const zeros = (fig: string, width: number) =>
  `${fig.startsWith("-") ? "-" : "+"}${fig.replace("-", "").padStart(width, "0")}`;
export const grouped = (fig: string, mark: string) => fig.replace(/\B(?=(\d{3})+(?!\d))/g, mark);
export const detached = (fig: string, width: number) =>
  `${fig.startsWith("-") ? "-" : " "}${fig.replace("-", "").padStart(width)}`;
export const hex = (n: number) => n.toString(16).toUpperCase().padStart(2, "0");
export const xor = (text: string) => [...text].reduce((sum, c) => sum ^ c.charCodeAt(0), 0);
export const sum = (text: string) => [...text].reduce((total, c) => total + c.charCodeAt(0), 0);
export const digitSum = (text: string) =>
  [...text].reduce((total, c) => total + (c >= "0" && c <= "9" ? Number(c) : 0), 0);
export const clock = (ms: number) => new Date(ms + 36_000_000).toISOString().slice(11, 19);
export const STX = "\u0002";
export const ETX = "\u0003";
