import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import type { Verdict } from "../../../app/verdict/Judgement.ts";

export type Filter = {
  readonly text: string;
  readonly area: string;
  readonly taper: string;
  readonly verdict: Verdict | "never" | "";
  readonly withRetired: boolean;
};

export const noFilter: Filter = { text: "", area: "", taper: "", verdict: "", withRetired: false };

/** The rows that fit every part of the filter; an empty part fits all. */
export function filterRows(rows: readonly SpindleRow[], filter: Filter): readonly SpindleRow[] {
  const sought = filter.text.trim().toLocaleLowerCase();
  return rows.filter(({ spindle, verdict }) => {
    if (spindle.state === "retired" && !filter.withRetired) return false;
    if (filter.area !== "" && spindle.area !== filter.area) return false;
    if (filter.taper !== "" && spindle.taper !== filter.taper) return false;
    if (filter.verdict !== "" && (verdict ?? "never") !== filter.verdict) return false;
    const text = `${spindle.name} ${spindle.machine} ${spindle.area} ${spindle.taper} ${spindle.unitSerial ?? ""}`;
    return text.toLocaleLowerCase().includes(sought);
  });
}
