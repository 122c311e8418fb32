import { csvLine } from "../../app/words/csvCell.ts";
import { commonTexts } from "../words/commonTexts.ts";
import { useWords } from "../words/SpeechContext.tsx";
import { Button } from "./Button.tsx";
import { saveBytes } from "./saveBytes.ts";

/** So that spreadsheets take umlauts. */
const MARK = "\uFEFF";

/**
 * A button that saves a table as it stands on the screen, for spreadsheets.
 * @param name  of the file, without its ending
 * @param table  head and rows; asked for when the button is pressed
 */
export function SaveTable({
  name,
  of,
  table,
}: {
  readonly name: string;
  /** What the table is of, for who hears the button alone. */
  readonly of: string;
  readonly table: () => readonly (readonly unknown[])[];
}) {
  const words = useWords(commonTexts);
  const save = () => saveBytes(`${name}.csv`, "text/csv;charset=utf-8", MARK + table().map(csvLine).join(""));
  return (
    <Button kind="quiet" icon="save" aria-label={`${words.saveCsv}: ${of}`} onClick={save}>
      {words.saveCsv}
    </Button>
  );
}
