import type { GaugeRow } from "../../../app/contract/recordViews.ts";
import type { Speech } from "../../words/Speech.ts";
import { gaugesTexts } from "./texts.ts";

/** The gauges as a table for spreadsheets: capacity in newtons, days as YYYY-MM-DD. */
export function gaugeRows(rows: readonly GaugeRow[], { language }: Speech): unknown[][] {
  const words = gaugesTexts[language];
  return [
    [
      words.colName,
      words.colSerial,
      `${words.colCapacity}, N`,
      words.colState,
      words.colProved,
      words.colDue,
      words.colChecks,
    ],
    ...rows.map(({ gauge, proofState, checkCount }) => [
      gauge.name,
      gauge.serial ?? "",
      gauge.capacityN,
      { none: words.none, current: words.current, pastDue: words.pastDueShort, off: words.offShort }[proofState],
      gauge.provedOn ?? "",
      gauge.dueOn ?? "",
      checkCount,
    ]),
  ];
}
