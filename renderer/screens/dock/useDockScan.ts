import { useState } from "react";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { go } from "../../state/routeStore.ts";
import { useKeys } from "../../ui/keys/useKeys.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { measureTexts } from "../measure/texts.ts";
import { findLabel } from "../scan/findLabel.ts";
import { focusThing } from "../scan/focusThing.ts";

const SHOWN_MS = 4_000;

/**
 * A label scanned on Dock: a gauge's chooses it as the one that comes back, a spindle's goes to its row. What is matched is
 * never left by a scan; a spindle is opened only where there is nothing to lose.
 * @returns  the gauge last scanned
 */
export function useDockScan(view: DockingView | undefined): string | undefined {
  const core = useCore();
  const words = useWords(measureTexts);
  const [gaugeId, setGaugeId] = useState<string>();
  const onScan = async (label: string) => {
    const found = await findLabel(core, label);
    const tell = (text: string) => core.toasts.getState().show({ text, untilMs: Date.now() + SHOWN_MS });
    if (found === undefined) return tell(words.scanUnknown(label));
    tell(words.scanned(found.name));
    if (found.part === "gauge") setGaugeId(found.id);
    else if (!focusThing(found.id) && view === undefined)
      go(found.part === "spindle" ? { place: "spindle", spindleId: found.id } : { place: "gauges", find: found.id });
  };
  useKeys({ onScan });
  return gaugeId;
}
