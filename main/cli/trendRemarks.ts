import { median } from "../../app/numerics/median.ts";
import type { SeriesTrend } from "../../app/trend/seriesTrend.ts";
import type { TrendFile } from "./readTrendCsv.ts";

/** What has to be known beside the numbers. */
export type TrendRemark = { readonly code: "allEqual" | "oneX" | "longGap" | "unitMixed"; readonly text: string };

const TWO_YEARS_DAYS = 730.5;

/** A value five times the median or a fifth of it is hardly a spindle's course; a unit changed in the middle is. */
const TIMES = 5;

export function trendRemarks({ x, y, xKind }: TrendFile, { whole }: SeriesTrend): TrendRemark[] {
  const remarks: TrendRemark[] = [];
  if (whole.n < 2) return remarks;
  if (y.every((v) => v === y[0])) {
    remarks.push({ code: "allEqual", text: "All values are equal: nothing moves, as far as their digits show." });
  }
  if (whole.line === undefined) {
    remarks.push({ code: "oneX", text: "All values stand at the same x: nothing can be said of a trend." });
  }
  const middle = median(y);
  const odd = [...y.keys()].filter((i) => middle > 0 && (y[i]! > TIMES * middle || y[i]! < middle / TIMES));
  if (odd.length > 0) {
    const where = odd.slice(0, 5).map((i) => i + 1);
    remarks.push({
      code: "unitMixed",
      text: `Values far from all others (from the least x: ${where.join(", ")}${odd.length > 5 ? ", …" : ""}): is a unit mixed?`,
    });
  }
  if (xKind === "date" || xKind === "days") {
    for (let i = 1; i < x.length; i += 1) {
      const days = x[i]! - x[i - 1]!;
      if (days <= TWO_YEARS_DAYS) continue;
      const text = `No value for ${(days / 365.25).toFixed(1)} years after row ${i}: what happened meanwhile is not known.`;
      remarks.push({ code: "longGap", text });
    }
  }
  return remarks;
}
