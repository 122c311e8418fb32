import { useState } from "react";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { ColumnFields } from "./ColumnFields.tsx";
import { dockTexts } from "./texts.ts";

/** How a memory or file was read: its columns can be set right, and the way of reading kept for the next time. */
export function ReadAs({
  view,
  onRead,
  onKept,
}: {
  readonly view: DockingView;
  readonly onRead: (view: DockingView) => void;
  readonly onKept: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(dockTexts);
  const [name, setName] = useState("");
  const [kept, setKept] = useState<string>();
  // A stored way of reading has no columns to set: it is chosen or not.
  if (view.source === "sheet" || view.formatName == null || view.columns.length === 0) return null;
  const keep = async () => {
    const format = await report(core.client.call("formats.keep", { dockingId: view.dockingId, name: name.trim() }));
    if (format === undefined) return;
    setKept(format.name);
    onKept();
  };
  return (
    <details className="sheet form read-as">
      <summary>{words.readAs}</summary>
      <p className="soft">{words.readAsWhy}</p>
      <ColumnFields view={view} onRead={onRead} />
      {view.undecided.length === 0 && (
        <div className="row">
          <TextField label={words.keepName} value={name} onText={setName} maxLength={80} />
          <Button disabled={name.trim() === ""} onClick={keep}>
            {words.keep}
          </Button>
        </div>
      )}
      <p role="status">{kept === undefined ? "" : words.kept(kept)}</p>
    </details>
  );
}
