import type { GuardZone } from "../../../app/verdict/guardZones.ts";
import type { Limits, Verdict } from "../../../app/verdict/Judgement.ts";
import type { Colours } from "../colours.ts";
import type { Stretch } from "./zoom.ts";

export type TrendMark = {
  readonly checkId: string;
  readonly x: number;
  readonly valueN: number;
  /** Half of the whisker; undefined where no uncertainty is known. */
  readonly expandedN: number | undefined;
  /** Undefined: drawn as a plain dot, its row is not at hand. */
  readonly verdict: Verdict | undefined;
  readonly isBaseline: boolean;
  /** Gauge or adapter differ from the check before. */
  readonly toolChanged: boolean;
};

export type TrendLine = {
  readonly points: readonly {
    readonly x: number;
    readonly mid: number;
    readonly low: number | undefined;
    readonly high: number | undefined;
  }[];
  /** From here on nothing has been measured: the line is dashed and its band a cone. */
  readonly lastX: number;
};

export type TrendEvent = { readonly x: number; readonly label: string; readonly kind: "service" | "step" | "tool" };

/** Everything the trend chart draws; forces in newtons, x as the axis says. Ready made: the chart draws and does not compute. */
export type TrendView = {
  readonly marks: readonly TrendMark[];
  readonly lines: readonly TrendLine[];
  readonly events: readonly TrendEvent[];
  readonly limits: Limits;
  /** Guard bands of the rule, by the uncertainty of the newest check. */
  readonly zones: readonly GuardZone[];
  readonly baselineN: number | undefined;
  readonly todayX: number | undefined;
  /** When the warning limit (else the minimum) is reached. */
  readonly reach: { readonly low: number; readonly high: number | undefined; readonly label: string } | undefined;
  /** From first check to the end of what is foretold; `minX` to `maxX` is what is shown of it. */
  readonly whole: Stretch;
  readonly minX: number;
  readonly maxX: number;
  readonly minN: number;
  readonly maxN: number;
  readonly ticks: readonly { readonly x: number; readonly label: string }[];
  readonly unitN: number;
  readonly number: (value: number, decimals: number) => string;
  readonly words: {
    readonly warning: string;
    readonly minimum: string;
    readonly maximum: string;
    readonly guard: string;
    readonly today: string;
    readonly baseline: string;
  };
  readonly colours: Colours;
  /** Position in `marks` of the one picked out. */
  readonly picked: number | undefined;
};
