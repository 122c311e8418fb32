import type { LikeEntry } from "./compareLike.ts";
import type { StretchFit } from "./fitStretch.ts";
import type { TrendAxis } from "./trendAxis.ts";

const YEAR_DAYS = 365.25;
/** Through fewer checks a line says nothing. */
const LEAST_FOR_LINE = 4;

/**
 * A spindle as it is compared with its like: same taper, same nominal force.
 * @param course  on the axis of dates; its last segment is the present
 * @returns  undefined without taper, nominal force or check: there is nothing to call it like
 */
export function likeEntryOf(
  spindle: { readonly spindleId: string; readonly taper: string; readonly nominalN: number | undefined },
  course: { readonly axis: TrendAxis; readonly segments: readonly StretchFit[] },
): LikeEntry | undefined {
  const { spindleId, taper, nominalN } = spindle;
  const last = course.segments.at(-1);
  if (taper === "" || nominalN === undefined || last === undefined) return undefined;
  const line = last.n < LEAST_FOR_LINE ? undefined : last.line;
  const levelN = line === undefined ? last.lastY : line.intercept + line.slope * last.lastX;
  return {
    spindleId,
    group: `${taper} ${nominalN}`,
    level: levelN / nominalN,
    perYear: line === undefined || course.axis.kind !== "date" ? undefined : (line.slope * YEAR_DAYS) / nominalN,
  };
}
