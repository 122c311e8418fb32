import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import type { Limits } from "../../../app/verdict/Judgement.ts";
import type { ChartLevel } from "../pdf/drawChart.ts";
import { reportTexts } from "./reportTexts.ts";
import type { Writing } from "./Writing.ts";

const names = [
  ["minimumN", "minimum"],
  ["warningN", "warning"],
  ["nominalN", "nominal"],
  ["maximumN", "maximum"],
] as const;

/** The limits in a sentence's middle. */
export function limitWords(limits: Limits, unit: ForceUnit, write: Writing): string {
  const words = reportTexts[write.language];
  const said = names.flatMap(([key, name]) =>
    limits[key] === undefined ? [] : [`${words[name]} ${write.force(limits[key], unit)}`],
  );
  return said.length === 0 ? words.noLimits : said.join(", ");
}

/** The limits as lines across a chart, in its unit. */
export function limitLevels(limits: Limits, shown: (forceN: number) => number, write: Writing): ChartLevel[] {
  const words = reportTexts[write.language];
  return names.flatMap(([key, name]) =>
    limits[key] === undefined ? [] : [{ y: shown(limits[key]), name: words[name] }],
  );
}
