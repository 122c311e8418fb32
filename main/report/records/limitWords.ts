import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import type { Limits } from "../../../app/verdict/Judgement.ts";
import type { ChartLevel } from "../pdf/drawChart.ts";
import { force } from "./words.ts";

const names = [
  ["minimumN", "minimum"],
  ["warningN", "warning"],
  ["nominalN", "nominal"],
  ["maximumN", "maximum"],
] as const;

/** The limits in a sentence's middle. */
export function limitWords(limits: Limits, unit: ForceUnit): string {
  const said = names.flatMap(([key, name]) =>
    limits[key] === undefined ? [] : [`${name} ${force(limits[key], unit)}`],
  );
  return said.length === 0 ? "none stated" : said.join(", ");
}

/** The limits as lines across a chart, in its unit. */
export function limitLevels(limits: Limits, shown: (forceN: number) => number): ChartLevel[] {
  return names.flatMap(([key, name]) => (limits[key] === undefined ? [] : [{ y: shown(limits[key]), name }]));
}
