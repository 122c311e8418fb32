import { useStore } from "zustand";
import { useCore } from "../../../state/CoreContext.ts";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { errorWords } from "../../../words/errorWords.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";

/** What went wrong with port or gauge last; gone when it works again. */
export function LinkTrouble() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const problem = useStore(core.link, (state) => state.link?.problem);
  const simulated = useStore(core.link, (state) => state.link?.source?.kind === "simulated");
  if (problem === undefined || problem === null) return null;
  if (simulated) return <Problem>{words.simulatedGone}</Problem>;
  return (
    <Problem>{errorWords({ code: "link", key: `link.${problem.code}`, message: problem.message }, speech)}</Problem>
  );
}
