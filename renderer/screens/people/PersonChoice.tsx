import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { roleTexts } from "../../../app/words/recordTexts.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { peopleTexts } from "./peopleTexts.ts";
import "./people.css";

/** One of the people there, each a target for a gloved finger. */
export function PersonChoice({
  title,
  why,
  people,
  likely,
  empty,
  onChoose,
  onClose,
}: {
  readonly title: string;
  readonly why: string;
  readonly people: readonly OperatorView[];
  /** Who it was last. */
  readonly likely?: string | undefined;
  readonly empty?: string;
  readonly onChoose: (person: OperatorView) => void;
  readonly onClose: () => void;
}) {
  const words = useWords(peopleTexts);
  const common = useWords(commonTexts);
  const roleWords = useWords(roleTexts);
  return (
    <Dialog wide title={title} onClose={onClose} acts={<Button onClick={onClose}>{common.cancel}</Button>}>
      <p className="why">{why}</p>
      {people.length === 0 && <p role="status">{empty}</p>}
      <ul className="persons">
        {people.map((person, i) => (
          <li key={person.operatorId}>
            <button
              type="button"
              data-first={i === 0 || undefined}
              className={person.operatorId === likely ? "likely" : undefined}
              onClick={() => onChoose(person)}
            >
              <b>{person.name}</b>
              <small>
                {roleWords[person.role]}
                {person.hasPin && ` · ${words.hasPin}`}
              </small>
            </button>
          </li>
        ))}
      </ul>
    </Dialog>
  );
}
