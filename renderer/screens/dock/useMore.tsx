import { type ReactNode, useState } from "react";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { questionTexts } from "./questionTexts.ts";

/** A full memory has thousands of readings; drawn all at once they would hold the page up. */
const AT_ONCE = 60;

/** The first of a long list, and the button that shows more of it. */
export function useMore<T>(all: readonly T[]): { readonly shown: readonly T[]; readonly button: ReactNode } {
  const words = useWords(questionTexts);
  const [count, setCount] = useState(AT_ONCE);
  const more = Math.min(AT_ONCE, all.length - count);
  const button = more <= 0 ? undefined : <Button onClick={() => setCount(count + AT_ONCE)}>{words.more(more)}</Button>;
  return { shown: all.slice(0, count), button };
}
