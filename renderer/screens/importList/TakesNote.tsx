import type { TakesPreview } from "../../../app/contract/importViews.ts";
import { unitText } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { importTexts } from "./texts.ts";

/** What becomes of rows that hold several takes, with the first of them worked out. */
export function TakesNote({ takes }: { readonly takes: TakesPreview | undefined }) {
  const speech = useSpeech();
  const words = useWords(importTexts);
  if (takes === undefined) return null;
  const { row, takes: figures, mean, unit, decimals } = takes.example;
  const shown = (figure: number) => speech.number(figure, decimals);
  return (
    <p role="status">
      {words.takes(speech.number(takes.rows))}{" "}
      {words.takesExample(speech.number(row), figures.map(shown).join(" · "), `${shown(mean)}\u00a0${unitText(unit)}`)}
    </p>
  );
}
