import type { Colours } from "../colours.ts";

/** One reading or step. Marks of one series look alike: a shape for each, since colour alone tells nothing. */
export type PlotPoint = {
  readonly x: number;
  readonly y: number;
  /** Half of the whisker; undefined where no uncertainty is known. */
  readonly half: number | undefined;
  /** Position in `series`. */
  readonly series: number;
};

export type PlotLine = {
  readonly points: readonly { readonly x: number; readonly y: number }[];
  /** `curve`: what was fitted. `limit`: a border. `zero`: no error. */
  readonly kind: "curve" | "limit" | "zero";
  /** Stands at the line's end, inside the picture. */
  readonly word?: string | undefined;
};

/** Everything a chart of a proof draws, in the units it shows. Ready made: the chart draws and does not compute. */
export type PlotView = {
  readonly points: readonly PlotPoint[];
  readonly series: readonly { readonly word: string; readonly solid: boolean }[];
  readonly lines: readonly PlotLine[];
  /** Between two lines lies what is allowed, or what is known. */
  readonly band: readonly { readonly x: number; readonly low: number; readonly high: number }[];
  readonly xTitle: string;
  readonly yTitle: string;
  /** Labels of the x axis where it shows no plain numbers, as days. */
  readonly xTicks?: readonly { readonly x: number; readonly label: string }[] | undefined;
  readonly minX: number;
  readonly maxX: number;
  readonly minY: number;
  readonly maxY: number;
  readonly number: (value: number, decimals: number) => string;
  readonly colours: Colours;
  /** Position in `points` of the one picked out. */
  readonly picked: number | undefined;
};

/** The span an axis shows for its values, with room at both ends; a value that stands alone gets room too. */
export function spanOf(values: readonly number[], room = 0.08): { readonly min: number; readonly max: number } {
  let [min, max] = [Infinity, -Infinity];
  for (const value of values) {
    if (!Number.isFinite(value)) continue;
    min = Math.min(min, value);
    max = Math.max(max, value);
  }
  if (min > max) return { min: 0, max: 1 };
  const width = max - min || Math.abs(max) || 1;
  return { min: min - room * width, max: max + room * width };
}
