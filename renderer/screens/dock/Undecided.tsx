import type { Input } from "../../../app/contract/methods.ts";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { dockTexts } from "./texts.ts";

type Hints = NonNullable<Input<"docking.read">["hints"]>;
const fields = ["force", "unit", "number", "location", "date", "time", "stamp", "kind", "ignored"] as const;
const units = ["kN", "N", "daN", "lbf", "kgf"] as const;

/** What the memory could not tell by itself; each answer reads it anew. */
export function Undecided({
  view,
  onRead,
}: {
  readonly view: DockingView;
  readonly onRead: (view: DockingView) => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(dockTexts);
  const say = async (hints: Hints) => {
    const next = await report(core.client.call("docking.read", { dockingId: view.dockingId, hints }));
    if (next !== undefined) onRead(next);
  };
  if (view.source === "sheet" || (view.undecided.length === 0 && view.formatName != null)) return null;
  return (
    <section className="sheet form">
      {view.formatName == null && <Problem>{words.notUnderstood}</Problem>}
      {view.undecided.map(({ field, proposal }) => (
        <div key={field} className="row question">
          {field === "dateOrder" && (
            <>
              <span>{words["ask.dateOrder"]}</span>
              {(["dmy", "mdy"] as const).map((order) => (
                <Button
                  key={order}
                  kind={order === proposal ? "main" : "plain"}
                  onClick={() => say({ dateOrder: order })}
                >
                  {words[order]}
                </Button>
              ))}
            </>
          )}
          {field === "unit" && proposal != null && (
            <>
              <span>{words["ask.mass"](proposal)}</span>
              <Button kind="main" onClick={() => say({ massMeansForce: true })}>
                {words.yes}
              </Button>
            </>
          )}
          {field === "unit" && proposal == null && (
            <>
              <span>{words["ask.unit"]}</span>
              {units.map((unit) => (
                <Button key={unit} onClick={() => say({ unit })}>
                  {unit}
                </Button>
              ))}
            </>
          )}
        </div>
      ))}
      {view.formatName == null && view.columns.length > 0 && (
        <fieldset>
          <legend>{words.columns}</legend>
          {view.columns.map((column, c) => (
            <SelectField
              key={`${column.head ?? ""}${column.sample}`}
              label={words.column(c + 1, column.head ?? column.sample)}
              value={column.field}
              options={fields.map((value) => ({ value, label: words[`field.${value}`] }))}
              onChoose={(field) => say({ columns: { [c]: field } })}
            />
          ))}
        </fieldset>
      )}
    </section>
  );
}
