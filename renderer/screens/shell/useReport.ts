import { useCallback } from "react";
import type { Failure, Result } from "../../../app/contract/result.ts";
import { useCore } from "../../state/CoreContext.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech } from "../../words/SpeechContext.tsx";

/** How long a failure stays in sight. */
const SHOWN_MS = 12_000;

/** Waits for a call and says in words when it failed. Answers the value, undefined when it failed. */
export function useReport(): <T>(answer: Promise<Result<T>>) => Promise<T | undefined> {
  const core = useCore();
  const speech = useSpeech();
  return useCallback(
    async (answer) => {
      const result = await answer;
      if (result.ok) return result.value;
      const say = (failure: Failure) => errorWords(failure, speech);
      core.toasts.getState().show({ text: say(result.error), untilMs: Date.now() + SHOWN_MS });
      return undefined;
    },
    [core, speech],
  );
}
