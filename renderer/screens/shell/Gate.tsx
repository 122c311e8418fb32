import type { ReactNode } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { EmptyState } from "../../ui/feedback/EmptyState.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { shellTexts } from "./texts.ts";

/** Screens stand only where the program has spoken; before, and for a page it does not know, it is said in plain words. */
export function Gate({ children }: { readonly children: ReactNode }) {
  const words = useWords(shellTexts);
  const refused = useProgram((state) => state.connection === "refused");
  const known = useProgram((state) => state.program !== undefined);
  if (refused) return <EmptyState title={words.refusedTitle}>{words.refused}</EmptyState>;
  if (!known) return <p role="status">{words.starting}</p>;
  return children;
}
