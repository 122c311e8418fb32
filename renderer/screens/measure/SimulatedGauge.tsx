import { useState } from "react";
import { useStore } from "zustand";
import type { Input } from "../../../app/contract/methods.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { measureTexts } from "./texts.ts";

type Command = Input<"simulated.command">["command"];

/** The simulated gauge is played with here: clamp, release, and what can go wrong. */
export function SimulatedGauge() {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const [faults, setFaults] = useState(false);
  const clamped = useStore(core.live, ({ live }) => live.word === "holding" || live.word === "rising");
  const plugged = useStore(core.link, ({ link }) => link?.state !== "waiting");
  const act = (command: Command, label: string, keyHint?: string) => (
    <Button keyHint={keyHint} onClick={() => report(core.client.call("simulated.command", { command }))}>
      {label}
    </Button>
  );
  return (
    <section className="simulated" aria-label={words.simulated}>
      <small>{words.simulated}</small>
      {clamped ? act("release", words.release, "C") : act("clamp", words.clamp, "C")}
      <Button kind="quiet" aria-expanded={faults} onClick={() => setFaults(!faults)}>
        {words.moreFaults}
      </Button>
      {faults && (
        <div className="faults sheet">
          {act("dry", words.dry)}
          {act("grease", words.grease)}
          {act("breakSpring", words.breakSpring)}
          {act("newSprings", words.newSprings)}
          {act("spike", words.spike)}
          {act("overload", words.overloadAct)}
          {act("knock", words.knock)}
          {plugged ? act("unplug", words.unplug) : act("plug", words.plug)}
        </div>
      )}
    </section>
  );
}
