import type { ReferenceRow } from "../../../../app/contract/proofViews.ts";
import { commonTexts } from "../../../words/commonTexts.ts";
import type { Speech } from "../../../words/Speech.ts";
import { referenceTexts } from "./referenceTexts.ts";

/** The references as a table for spreadsheets: forces in newtons, days as YYYY-MM-DD. */
export function referenceRows(rows: readonly ReferenceRow[], { language }: Speech): unknown[][] {
  const words = referenceTexts[language];
  const common = commonTexts[language];
  return [
    [
      words.colName,
      words.serial,
      words.colKind,
      `${words.colCapacity}, N`,
      words.colClass,
      words.colDue,
      words.certificate,
      words.colState,
    ],
    ...rows.map(({ reference, dueState }) => [
      reference.name,
      reference.serial ?? "",
      words[reference.kind],
      reference.transducer?.capacityN ?? reference.typed?.capacityN ?? "",
      reference.transducer?.class ?? "",
      reference.transducer?.dueOn ?? reference.typed?.dueOn ?? "",
      reference.certificate ?? "",
      reference.state === "retired" ? common.retired : dueState === "pastDue" ? words.pastDue : words.inUse,
    ]),
  ];
}
