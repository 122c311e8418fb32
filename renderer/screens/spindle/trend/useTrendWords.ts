import { useMemo } from "react";
import { serviceTexts } from "../../../../app/words/recordTexts.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { trendTexts } from "./trendTexts.ts";
import type { TrendWords } from "./trendViewOf.ts";

/** The chart's words in the reader's language; the same object while the language stays. */
export function useTrendWords(): TrendWords {
  const words = useWords(trendTexts);
  const services = useWords(serviceTexts);
  return useMemo(
    () => ({
      ...words,
      service: (kind) => (Object.hasOwn(services, kind) ? services[kind as keyof typeof services] : kind),
    }), // just found there
    [words, services],
  );
}
