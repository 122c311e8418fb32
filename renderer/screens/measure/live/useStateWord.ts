import { useStore } from "zustand";
import type { LiveView } from "../../../../app/contract/seriesViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { linkTexts } from "../../link/texts.ts";
import { measureTexts } from "../texts.ts";

/** What the gauge does now: its word and that word's text, whether a gauge is heard at all, and whether it is to be called out. */
export function useStateWord(): {
  readonly word: LiveView["word"];
  readonly text: string;
  readonly heard: boolean;
  readonly loud: boolean;
} {
  const core = useCore();
  const words = useWords(measureTexts);
  const linkWords = useWords(linkTexts);
  const linkState = useStore(core.link, ({ link }) => link?.state ?? "closed");
  const word = useStore(core.live, ({ live }) => live.word);
  const heard = linkState === "open" || linkState === "silent";
  const beginning = linkState === "opening" || linkState === "listening";
  const loud = !beginning && (!heard || word === "overload" || word === "silent");
  const text = heard || linkState === "closed" || linkState === "failed" ? words[word] : linkWords[linkState];
  return { word, text, heard, loud };
}
