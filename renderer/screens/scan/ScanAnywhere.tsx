import { useCore } from "../../state/CoreContext.ts";
import { go, type Route } from "../../state/routeStore.ts";
import { useKeys } from "../../ui/keys/useKeys.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { measureTexts } from "../measure/texts.ts";
import { findLabel } from "./findLabel.ts";

const SHOWN_MS = 4_000;
/** Here a scan means something of its own. */
const ownScans: ReadonlySet<Route["place"]> = new Set(["measure", "dock"]);

/** A label scanned on any screen opens its thing: a spindle's or a gauge's page, or the row of an adapter. */
export function ScanAnywhere({ place }: { readonly place: Route["place"] }) {
  const core = useCore();
  const words = useWords(measureTexts);
  const onScan = async (label: string) => {
    const found = await findLabel(core, label);
    const text = found === undefined ? words.scanUnknown(label) : words.scanned(found.name);
    core.toasts.getState().show({ text, untilMs: Date.now() + SHOWN_MS });
    if (found === undefined) return;
    if (found.part === "spindle") go({ place: "spindle", spindleId: found.id });
    else if (found.part === "gauge") go({ place: "gauge", gaugeId: found.id });
    else go({ place: "gauges", find: found.id });
  };
  useKeys(ownScans.has(place) ? {} : { onScan });
  return null;
}
