import type { FiledCycle } from "../../../app/ledger/check.ts";
import { type ForceUnit, fromNewtons } from "../../../app/quantity/forceUnits.ts";
import { flagTexts } from "../../../app/words/recordTexts.ts";
import { type Speech, unitText } from "../../words/Speech.ts";
import { checkTexts } from "./texts.ts";

/** A check's clampings as a table for spreadsheets: shares as percent, times in milliseconds, nothing rounded. */
export function cycleRows(cycles: readonly FiledCycle[], unit: ForceUnit, { language }: Speech): unknown[][] {
  const words = checkTexts[language];
  const name = unitText(unit);
  const force = (forceN: number | null) => (forceN === null ? "" : Number(fromNewtons(forceN, unit).toPrecision(9)));
  const times = (value: number | null, factor: number) =>
    value === null ? "" : Number((value * factor).toPrecision(9));
  return [
    [
      words.colNo,
      words.colSettled(name),
      words.colPeak(name),
      `${words.colOvershoot}, %`,
      `${words.colRise}, ms`,
      words.colNoise(name),
      `${words.colCreep}, %`,
      words.colZero(name),
      words.colFlags,
    ],
    ...cycles.map((cycle, i) => [
      i + 1,
      force(cycle.settledN),
      force(cycle.peakN),
      times(cycle.overshoot, 100),
      times(cycle.riseTimeS, 1000),
      force(cycle.noiseN),
      times(cycle.creep, 100),
      force(cycle.zeroN),
      [
        ...cycle.flags.map((flag) => flagTexts[language][flag]),
        ...(cycle.dropped === null
          ? []
          : [cycle.dropped.reason === "" ? words.droppedPlain : words.dropped(cycle.dropped.reason)]),
      ].join("; "),
    ]),
  ];
}
