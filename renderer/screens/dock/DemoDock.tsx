import { useState } from "react";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { dockTexts } from "./texts.ts";
import { useReading } from "./useReading.tsx";

/** In the demo one act brings the simulated gauge back from its round; docked once more, it brings nothing new. */
export function DemoDock({ onRead }: { readonly onRead: (view: DockingView) => void }) {
  const core = useCore();
  const words = useWords(dockTexts);
  const demo = useProgram((state) => state.program?.demo === true);
  const { busy, line, take } = useReading(onRead);
  const [docked, setDocked] = useState(false);
  if (!demo) return null;
  const dock = async (anew: boolean) => {
    const view = await take(() => core.client.call("docking.demo", { anew }));
    if (view !== undefined) setDocked(true);
  };
  return (
    <section className="sheet form demo-dock" aria-labelledby="demo-dock">
      <h2 id="demo-dock">{words.demoTitle}</h2>
      <p className="why">{words.demoWhy}</p>
      <div className="row">
        <Button kind={docked ? "plain" : "main"} busy={busy} onClick={() => dock(false)}>
          {words.demoDock}
        </Button>
        {docked && (
          <Button kind="quiet" busy={busy} onClick={() => dock(true)}>
            {words.demoAnew}
          </Button>
        )}
      </div>
      {line}
    </section>
  );
}
