import { useStore } from "zustand";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";
import { useSimulated } from "./useSimulated.ts";

/** What can go wrong with gauge and spindle, to be tried out. */
export function SimulatedFaults() {
  const core = useCore();
  const words = useWords(measureTexts);
  const command = useSimulated();
  const plugged = useStore(core.link, ({ link }) => link?.state !== "waiting");
  return (
    <section className="faults" aria-label={words.moreFaults}>
      <Button onClick={() => command("dry")}>{words.dry}</Button>
      <Button onClick={() => command("grease")}>{words.grease}</Button>
      <Button onClick={() => command("breakSpring")}>{words.breakSpring}</Button>
      <Button onClick={() => command("newSprings")}>{words.newSprings}</Button>
      <Button onClick={() => command("spike")}>{words.spike}</Button>
      <Button onClick={() => command("overload")}>{words.overloadAct}</Button>
      <Button onClick={() => command("knock")}>{words.knock}</Button>
      <Button onClick={() => command(plugged ? "unplug" : "plug")}>{plugged ? words.unplug : words.plug}</Button>
    </section>
  );
}
