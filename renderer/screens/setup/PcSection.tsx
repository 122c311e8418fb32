import { useState } from "react";
import type { PcSettings } from "../../../app/contract/programViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Choices } from "../../ui/field/Choices.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { singleKeys } from "../../ui/keys/singleKeys.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { peopleTexts } from "../people/peopleTexts.ts";
import { useReport } from "../shell/useReport.ts";
import { setupTexts } from "./texts.ts";

/** How this PC shows things; none of it affects a verdict. */
export function PcSection() {
  const core = useCore();
  const report = useReport();
  const words = useWords(setupTexts);
  const about = useWords(peopleTexts);
  const settings = useProgram((state) => state.settings);
  const [keys, setKeys] = useState(singleKeys.on);
  const save = async (change: Partial<PcSettings>) => {
    const saved = await report(core.client.call("settings.save", change));
    if (saved !== undefined) core.program.setState({ settings: saved });
  };
  return (
    <section className="sheet" aria-labelledby="pc-title">
      <h2 id="pc-title">{words.thisPc}</h2>
      <Choices
        label={words.language}
        value={settings.language}
        options={[
          { value: "system", label: words.system },
          { value: "en", label: words.english },
          { value: "de", label: words.german },
        ]}
        onChoose={(language) => save({ language })}
      />
      <Choices
        label={words.theme}
        value={settings.theme}
        options={[
          { value: "system", label: words.system },
          { value: "light", label: words.light },
          { value: "dark", label: words.dark },
        ]}
        onChoose={(theme) => save({ theme })}
      />
      <Tick checked={settings.sound} onTick={(sound) => save({ sound })}>
        {words.sound}
      </Tick>
      <Tick checked={settings.initials} onTick={(initials) => save({ initials })}>
        {about.byInitials}
      </Tick>
      <Tick
        checked={keys}
        onTick={(on) => {
          singleKeys.set(on);
          setKeys(on);
        }}
      >
        {words.singleKeys}
      </Tick>
    </section>
  );
}
