import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import { hintEvidence, hintTexts, noteWords } from "../../../app/words/evidenceWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindleTexts } from "./texts.ts";

const width = { strong: 66, some: 34, weak: 10 } as const;

/** What the course resembles, with what speaks for and against it; never a verdict. */
export function Hints({ page }: { readonly page: SpindlePage }) {
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const hintWords = useWords(hintTexts);
  const { hints, notes } = page.trend;
  return (
    <section>
      <h2>{words.looksLike}</h2>
      {hints.length === 0 && <p className="soft">{words.noHints}</p>}
      <ul className="hints">
        {hints.map((hint) => {
          const { pro, con } = hintEvidence(hint, speech);
          return (
            <li key={hint.pattern}>
              <b>{hintWords[hint.pattern]}</b>
              <span className="weight" style={{ width: width[hint.strength] }} aria-hidden="true" />
              <small>{hintWords[hint.strength]}</small>
              <small>{`${hintWords.for} ${pro}.`}</small>
              {con !== undefined && <small>{`${hintWords.against} ${con}.`}</small>}
            </li>
          );
        })}
      </ul>
      {hints.length > 0 && <small>{hintWords.caution}</small>}
      {notes.length > 0 && (
        <ul className="hints">
          {notes.map((note) => (
            <li key={JSON.stringify(note)}>
              <small>{noteWords(note, speech)}</small>
            </li>
          ))}
        </ul>
      )}
    </section>
  );
}
