import { type KeyboardEvent, type ReactNode, useId, useMemo, useRef, useState } from "react";
import { commonTexts } from "../words/commonTexts.ts";
import { useWords } from "../words/SpeechContext.tsx";
import { Button } from "./Button.tsx";
import { Dialog } from "./Dialog.tsx";
import { searchChoices } from "./searchChoices.ts";
import "./picker.css";

export type Choice = {
  readonly id: string;
  readonly name: string;
  /** What tells it from others of like name. */
  readonly about?: string;
  /** Why one would think twice; the choice stays open. */
  readonly doubt?: string | undefined;
};

/** More rows than this are never looked through by eye: the search is. */
const MOST_SHOWN = 60;

/**
 * Choosing one of many by typing or scanning its name: the first match is chosen with Enter, arrows move, and what fits best
 * (a spindle's taper) stands on top.
 */
export function Picker({
  title,
  choices,
  chosen,
  onChoose,
  onClose,
  none,
  empty,
}: {
  readonly title: string;
  readonly choices: readonly Choice[];
  readonly chosen: string | undefined;
  readonly onChoose: (id: string | undefined) => void;
  readonly onClose: () => void;
  /** Words for "none of these", when that is an answer. */
  readonly none?: string | undefined;
  /** What to say and do where there is nothing to choose from. */
  readonly empty?: ReactNode;
}) {
  const words = useWords(commonTexts);
  const [text, setText] = useState("");
  const [at, setAt] = useState(0);
  const listId = useId();
  const list = useRef<HTMLDivElement>(null);
  const shown = useMemo(() => searchChoices(choices, text).slice(0, MOST_SHOWN), [choices, text]);
  const current = Math.min(at, shown.length - 1);

  const move = (to: number) => {
    const next = Math.max(0, Math.min(shown.length - 1, to));
    setAt(next);
    list.current?.children[next]?.scrollIntoView({ block: "nearest" });
  };
  const typed = (event: KeyboardEvent) => {
    const step = event.key === "ArrowDown" ? 1 : event.key === "ArrowUp" ? -1 : 0;
    if (step === 0) return;
    event.preventDefault();
    move(current + step);
  };
  const choose = () => {
    const choice = shown[current];
    if (choice !== undefined) onChoose(choice.id);
  };

  return (
    <Dialog
      title={title}
      onClose={onClose}
      onSubmit={choose}
      acts={
        <>
          {none !== undefined && <Button onClick={() => onChoose(undefined)}>{none}</Button>}
          <Button onClick={onClose}>{words.cancel}</Button>
        </>
      }
    >
      {choices.length === 0 ? (
        <div className="stack">{empty}</div>
      ) : (
        <>
          <input
            className="search"
            type="text"
            role="combobox"
            aria-label={words.search}
            aria-expanded="true"
            aria-controls={listId}
            aria-activedescendant={shown[current] && `${listId}-${shown[current].id}`}
            placeholder={words.search}
            autoComplete="off"
            spellCheck={false}
            value={text}
            onChange={(event) => {
              setText(event.target.value);
              setAt(0);
            }}
            onKeyDown={typed}
          />
          <div className="choices-list" role="listbox" id={listId} aria-label={title} ref={list}>
            {shown.map((choice, i) => (
              // The combobox keeps the focus and answers the keys; the option answers the pointer.
              // biome-ignore lint/a11y/useKeyWithClickEvents: keys are the combobox's
              // biome-ignore lint/a11y/useFocusableInteractive: focus stays in the combobox (aria-activedescendant)
              <div
                key={choice.id}
                id={`${listId}-${choice.id}`}
                role="option"
                aria-selected={i === current}
                className={choice.id === chosen ? "chosen" : undefined}
                onClick={() => onChoose(choice.id)}
              >
                <b>{choice.name}</b>
                {choice.about !== undefined && <small>{choice.about}</small>}
                {choice.doubt !== undefined && <small className="doubt">{choice.doubt}</small>}
              </div>
            ))}
          </div>
        </>
      )}
    </Dialog>
  );
}
