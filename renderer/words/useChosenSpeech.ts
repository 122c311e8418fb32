import { useMemo } from "react";
import type { PcSettings } from "../../app/contract/programViews.ts";
import { languageOf, localeOf } from "./language.ts";
import { createSpeech, type Speech } from "./Speech.ts";

/** How to speak to this reader: the language chosen, the machine's forms for it, the works' clock. */
export function useChosenSpeech(choice: PcSettings["language"], timeZone: string | undefined): Speech {
  return useMemo(() => {
    const language = languageOf(choice, navigator.languages);
    return createSpeech(language, localeOf(language, navigator.languages), timeZone);
  }, [choice, timeZone]);
}
