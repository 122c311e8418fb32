import { useId } from "react";
import type { Source } from "../../../../app/contract/linkViews.ts";
import { useProgram } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { portMemory, settingText, usualSetting } from "../../link/portMemory.ts";
import { linkTexts } from "../../link/texts.ts";
import { usePorts } from "../../link/usePorts.ts";
import { leadTexts } from "./leadTexts.ts";

/** The reference's own port, beside the gauge's; with the setting it was last used with. */
export function ReferencePorts({ onOpen }: { readonly onOpen: (source: Source) => void }) {
  const words = useWords(leadTexts);
  const link = useWords(linkTexts);
  const { list } = usePorts();
  const demo = useProgram((state) => state.program?.demo === true);
  const titleId = useId();
  return (
    <section className="connect" aria-labelledby={titleId}>
      <h2 id={titleId}>{words.connectReference}</h2>
      <ul>
        {demo && (
          <li>
            <Button kind="main" onClick={() => onOpen({ kind: "simulated" })}>
              {words.simulatedReference}
            </Button>
            <small>{link.simulatedAbout}</small>
          </li>
        )}
        {list?.ports.map(({ path, label, obstacle }) => {
          const setting = portMemory.of(path) ?? usualSetting;
          return (
            <li key={path}>
              <Button
                disabled={obstacle !== undefined}
                onClick={() => {
                  portMemory.keep(path, setting);
                  onOpen({ kind: "serial", path, setting });
                }}
              >
                {label}
              </Button>
              <small>{obstacle?.message ?? settingText(setting)}</small>
            </li>
          );
        })}
        {list?.ports.length === 0 && !demo && <li className="soft">{list.hint ?? link.noPorts}</li>}
      </ul>
    </section>
  );
}
