import type { AdapterRow } from "../../../app/contract/recordViews.ts";
import { commonTexts } from "../../words/commonTexts.ts";
import type { Speech } from "../../words/Speech.ts";
import { gaugesTexts } from "./texts.ts";

/** The adapters as a table for spreadsheets, as a list of them is imported again: days as YYYY-MM-DD, shares as they are. */
export function adapterRows(rows: readonly AdapterRow[], { language }: Speech): unknown[][] {
  const words = gaugesTexts[language];
  const common = commonTexts[language];
  return [
    [
      words.colName,
      words.colTaper,
      words.colSerial,
      words.colScale,
      words.colScaleU,
      words.colState,
      words.colCalibrated,
      words.colDue,
      words.colChecks,
    ],
    ...rows.map(({ adapter, proofState, checkCount }) => [
      adapter.name,
      adapter.taper,
      adapter.serial ?? "",
      adapter.scale,
      adapter.scaleUncertainty,
      adapter.state === "retired"
        ? common.retired
        : adapter.assumed
          ? words.notCalibrated
          : { none: words.none, current: words.current, pastDue: words.pastDueShort, off: words.offShort }[proofState],
      adapter.calibratedOn ?? "",
      adapter.dueOn ?? "",
      checkCount,
    ]),
  ];
}
