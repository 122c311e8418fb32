import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { dockTexts } from "./texts.ts";
import { useReading } from "./useReading.tsx";

/** Readings without dates that were taken as docked before: how that was decided, and the way to say otherwise. */
export function KnownInDoubt({
  view,
  onRead,
}: {
  readonly view: DockingView;
  readonly onRead: (view: DockingView) => void;
}) {
  const core = useCore();
  const words = useWords(dockTexts);
  const { busy, line, take } = useReading(onRead);
  return (
    <div className="row">
      <p className="loud">{words.doubtful(view.known)}</p>
      <Button
        busy={busy}
        onClick={() => take(() => core.client.call("docking.read", { dockingId: view.dockingId, allNew: true }))}
      >
        {words.allNew}
      </Button>
      {line}
    </div>
  );
}
