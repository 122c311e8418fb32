import { type ReactNode, useRef } from "react";
import { useHeightAs } from "../../../ui/useHeightAs.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { measureTexts } from "../texts.ts";

/** The foot of Measure: clampings, sum and acts. It stays in sight however much stands above it. */
export function Series({ children }: { readonly children: ReactNode }) {
  const words = useWords(measureTexts);
  const foot = useRef<HTMLElement>(null);
  useHeightAs("--series-height", foot);
  return (
    <section className="series" aria-label={words.cycles} ref={foot}>
      {children}
    </section>
  );
}
