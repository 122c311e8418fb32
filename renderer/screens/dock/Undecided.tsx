import type { Input } from "../../../app/contract/methods.ts";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { ColumnFields } from "./ColumnFields.tsx";
import { dockTexts } from "./texts.ts";
import { useReading } from "./useReading.tsx";

type Hints = NonNullable<Input<"docking.read">["hints"]>;
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
  const words = useWords(dockTexts);
  const { busy, line, take } = useReading(onRead);
  const say = (hints: Hints) => take(() => core.client.call("docking.read", { dockingId: view.dockingId, hints }));
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
                  busy={busy}
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
              <Button kind="main" busy={busy} onClick={() => say({ massMeansForce: true })}>
                {words.yes}
              </Button>
            </>
          )}
          {field === "unit" && proposal == null && (
            <>
              <span>{words["ask.unit"]}</span>
              {units.map((unit) => (
                <Button key={unit} busy={busy} onClick={() => say({ unit })}>
                  {unit}
                </Button>
              ))}
            </>
          )}
        </div>
      ))}
      {line}
      {view.formatName == null && view.columns.length > 0 && <ColumnFields view={view} onRead={onRead} />}
    </section>
  );
}
