import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import { fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { whyWords } from "../../words/records/whyWords.ts";
import { forceUnitOf, type Speech } from "../../words/Speech.ts";
import type { DueDates } from "./sortRows.ts";
import { tableTexts } from "./tableTexts.ts";

/** The list as a table for spreadsheets: figures as numbers in the unit beside them, days as YYYY-MM-DD. */
export function spindleRows(
  rows: readonly SpindleRow[],
  due: DueDates,
  worksUnit: string,
  speech: Speech,
): unknown[][] {
  const words = tableTexts[speech.language];
  const figure = (forceN: number | undefined, unit: ReturnType<typeof forceUnitOf>) =>
    forceN === undefined ? "" : Number(fromNewtons(forceN, unit).toPrecision(7));
  return [
    Object.values(words),
    ...rows.map((row) => {
      const { spindle, last, verdict } = row;
      const unit = forceUnitOf(spindle.unitShown ?? worksUnit);
      const { minimumN, warningN, nominalN, maximumN } = spindle.limits;
      return [
        spindle.name,
        spindle.machine,
        spindle.area,
        spindle.taper,
        verdictTexts[speech.language][verdict ?? "never"],
        unit,
        figure(last?.valueN, unit),
        figure(last?.expandedN, unit),
        last === undefined ? "" : new Date(last.measuredAtMs).toISOString().slice(0, 10),
        whyWords(row, speech, unit),
        ...[minimumN, warningN, nominalN, maximumN].map((forceN) => figure(forceN, unit)),
        due.get(spindle.spindleId) ?? "",
      ];
    }),
  ];
}
