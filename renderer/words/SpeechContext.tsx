import { createContext, useContext } from "react";
import type { Pairs, Texts, Words } from "./inBoth.ts";
import { createSpeech, type Speech } from "./Speech.ts";

export const SpeechContext = createContext<Speech>(createSpeech("en", "en-GB"));

export const useSpeech = (): Speech => useContext(SpeechContext);

/** The texts of a place in the reader's language. */
export function useWords<P extends Pairs>(texts: Texts<P>): Words<P> {
  return texts[useSpeech().language];
}
