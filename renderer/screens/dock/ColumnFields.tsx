import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { dockTexts } from "./texts.ts";
import { useReading } from "./useReading.tsx";

const fields = ["force", "unit", "number", "location", "date", "time", "stamp", "kind", "ignored"] as const;

/** What each column of a file holds; each change reads it anew. */
export function ColumnFields({
  view,
  onRead,
}: {
  readonly view: DockingView;
  readonly onRead: (view: DockingView) => void;
}) {
  const core = useCore();
  const { line, take } = useReading(onRead);
  const words = useWords(dockTexts);
  return (
    <fieldset className="group">
      <legend>{words.columns}</legend>
      <div className="fields">
        {view.columns.map((column, c) => (
          <SelectField
            key={`${column.head ?? ""}${column.sample}`}
            label={words.column(c + 1, column.head ?? column.sample)}
            value={column.field}
            options={fields.map((value) => ({ value, label: words[`field.${value}`] }))}
            onChoose={(field) => {
              const hints = { columns: { [c]: field } };
              take(() => core.client.call("docking.read", { dockingId: view.dockingId, hints }));
            }}
          />
        ))}
      </div>
      {line}
    </fieldset>
  );
}
