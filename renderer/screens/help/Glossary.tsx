import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { glossaryFrame } from "./glossaryFrame.ts";
import { glossary } from "./glossaryTexts.ts";
import { helpTexts } from "./texts.ts";

/** The terms, in our words, with the number under which the standard defines each. */
export function Glossary() {
  const speech = useSpeech();
  const words = useWords(helpTexts);
  const frame = useWords(glossaryFrame);
  const side = speech.language === "en" ? 0 : 1;
  const sorted = glossary.toSorted((a, b) => a.term[side].localeCompare(b.term[side], speech.language));
  return (
    <>
      <h2>{words.glossary}</h2>
      <p className="why">{frame.lead}</p>
      <dl className="terms">
        {sorted.map(({ term, meaning, source }) => (
          <div key={term[0]}>
            <dt>{term[side]}</dt>
            <dd>
              {meaning[side]} {source !== undefined && <small>{source}</small>}
            </dd>
          </div>
        ))}
      </dl>
      <p className="small soft">{frame.sources}</p>
    </>
  );
}
