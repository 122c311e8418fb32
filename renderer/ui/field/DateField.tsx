import { useRef, useState } from "react";
import { commonTexts } from "../../words/commonTexts.ts";
import { datePattern, isPlainDate, readTypedDate, typedDate } from "../../words/plainDates.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { Button } from "../Button.tsx";
import { Field, type FieldProps } from "./Field.tsx";

/**
 * A day, typed as the reader's language has it or picked from the browser's calendar. The date is the caller's, as
 * YYYY-MM-DD; what cannot be read is handed on as it stands, so that nothing typed is taken for an empty field.
 */
export function DateField({
  label,
  hint,
  error,
  value,
  onText,
}: FieldProps & { readonly value: string; readonly onText: (date: string) => void }) {
  const { locale } = useSpeech();
  const words = useWords(commonTexts);
  const picker = useRef<HTMLInputElement>(null);
  const [typing, setTyping] = useState<string>();
  const text = typing ?? typedDate(value, locale);
  const pattern = datePattern(locale, words.dateLetters);
  const unread = typing === undefined && text !== "" && readTypedDate(text, locale) === undefined;
  const take = (typed: string) => {
    setTyping(typed);
    onText(typed.trim() === "" ? "" : (readTypedDate(typed, locale) ?? typed));
  };
  return (
    <Field label={label} hint={hint} error={unread ? words.noDate(pattern) : error}>
      {(wiring) => (
        <span className="input date">
          <input
            {...wiring}
            autoComplete="off"
            placeholder={pattern}
            value={text}
            onChange={(e) => take(e.target.value)}
            onBlur={() => setTyping(undefined)}
          />
          <Button icon="calendar" title={words.pickDay} onClick={() => picker.current?.showPicker()}>
            <span className="unseen">
              {words.pickDay}: {label}
            </span>
          </Button>
          <input
            ref={picker}
            className="picker unseen"
            type="date"
            tabIndex={-1}
            aria-hidden="true"
            value={isPlainDate(value) ? value : ""}
            onChange={(e) => {
              setTyping(undefined);
              onText(e.target.value);
            }}
          />
        </span>
      )}
    </Field>
  );
}
