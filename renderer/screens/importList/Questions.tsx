import type { ImportPreview, ListFile } from "../../../app/contract/importViews.ts";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { shownUnits } from "../../words/units.ts";
import { questionTexts } from "./questionTexts.ts";
import { importTexts } from "./texts.ts";
import type { Said } from "./useListFile.ts";

/** What the file leaves open, asked where it does, and what was answered, to be changed. */
export function Questions({
  file,
  preview,
  onSay,
}: {
  readonly file: ListFile | undefined;
  readonly preview: ImportPreview;
  readonly onSay: (said: Said) => void;
}) {
  const words = useWords(importTexts);
  const ask = useWords(questionTexts);
  const stops = (code: string) => preview.problems.some((p) => p.weight === "stops" && p.code === code);
  const { book, unit, dateOrder } = preview;
  return (
    <>
      {book != null && book.sheets.length > 1 && (
        <SelectField
          label={ask.sheet}
          value={book.sheet ?? ""}
          options={[
            { value: "", label: ask.chooseSheet },
            ...book.sheets.map((name) => ({ value: name, label: name })),
          ]}
          // Another sheet has other columns and names.
          onChoose={(name) => onSay({ sheet: name === "" ? undefined : name, mapping: undefined, names: undefined })}
        />
      )}
      {(unit != null || stops("unitWanted")) && (
        <SelectField
          label={words.unit}
          hint={words.unitHint}
          value={unit ?? ""}
          options={[
            { value: "", label: words.chooseUnit },
            ...shownUnits.map((one) => ({ value: one as string, label: one })),
          ]}
          onChoose={(one) => onSay({ unit: one === "" ? undefined : one })}
        />
      )}
      {(dateOrder != null || stops("dateOrderWanted")) && (
        <SelectField
          label={ask.dateOrder}
          hint={ask.dateOrderHint}
          value={dateOrder ?? ""}
          options={[
            { value: "", label: ask.chooseOrder },
            { value: "dayFirst", label: ask.dayFirst },
            { value: "monthFirst", label: ask.monthFirst },
          ]}
          onChoose={(order) => onSay({ dateOrder: order === "" ? undefined : order })}
        />
      )}
      {(file?.passOverKnown === true || stops("twinInRegister")) && (
        <Tick checked={file?.passOverKnown === true} onTick={(passOverKnown) => onSay({ passOverKnown })}>
          {words.passOver}
        </Tick>
      )}
    </>
  );
}
