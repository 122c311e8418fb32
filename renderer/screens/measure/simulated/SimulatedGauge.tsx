import { useStore } from "zustand";
import { useCore } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";
import { useSimulated } from "./useSimulated.ts";

/** The simulated gauge is played with here: clamp, release, and the way to what can go wrong. */
export function SimulatedGauge({
  faults,
  onFaults,
}: {
  readonly faults: boolean;
  readonly onFaults: (shown: boolean) => void;
}) {
  const core = useCore();
  const words = useWords(measureTexts);
  const command = useSimulated();
  const clamped = useStore(core.live, ({ live }) => live.word === "holding" || live.word === "rising");
  return (
    <section className="simulated" aria-label={words.simulated}>
      <small>{words.simulated}</small>
      <Button keyHint="C" onClick={() => command(clamped ? "release" : "clamp")}>
        {clamped ? words.release : words.clamp}
      </Button>
      <Button kind="quiet" aria-expanded={faults} onClick={() => onFaults(!faults)}>
        {words.moreFaults}
      </Button>
    </section>
  );
}
