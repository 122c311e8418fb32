import { useStore } from "zustand";
import { useCore } from "../../../state/CoreContext.ts";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { errorWords } from "../../../words/errorWords.ts";
import { useSpeech } from "../../../words/SpeechContext.tsx";

/** What went wrong with port or gauge last; gone when it works again. */
export function LinkTrouble() {
  const core = useCore();
  const speech = useSpeech();
  const problem = useStore(core.link, (state) => state.link?.problem);
  if (problem === undefined || problem === null) return null;
  return (
    <Problem>{errorWords({ code: "link", key: `link.${problem.code}`, message: problem.message }, speech)}</Problem>
  );
}
