import { type InputHTMLAttributes, useState } from "react";
import type { Speech } from "../../words/Speech.ts";
import { useSpeech } from "../../words/SpeechContext.tsx";
import { Field, type FieldProps } from "./Field.tsx";

type Inherited =
  | "inputMode"
  | "autoFocus"
  | "autoComplete"
  | "required"
  | "maxLength"
  | "placeholder"
  | "type"
  | "list";

/** A figure as a draft holds it or as it is typed, a point before its decimals. */
const PLAIN = /^\s*[-\u2212]?\d*\.\d*\s*$/;
const decimalMark = (speech: Speech) => speech.number(0.5, 1).charAt(1);

/** One line of text. The text is the caller's; figures are read from it when it is used, not while it is typed. */
export function TextField({
  label,
  hint,
  error,
  value,
  onText,
  unit,
  wide = false,
  ...rest
}: FieldProps &
  Pick<InputHTMLAttributes<HTMLInputElement>, Inherited> & {
    readonly value: string;
    readonly onText: (text: string) => void;
    /** Stands behind the figure. */
    readonly unit?: string | undefined;
    readonly wide?: boolean;
  }) {
  const speech = useSpeech();
  const [typing, setTyping] = useState(false);
  // Both marks are read; what stands in a field at rest has the reader's own.
  const isFigure = rest.inputMode === "decimal" && !typing && PLAIN.test(value);
  const shown = isFigure ? value.replace(".", decimalMark(speech)) : value;
  return (
    <Field label={label} hint={hint} error={error}>
      {(wiring) => (
        <span className={wide ? "input wide" : "input"}>
          <input
            autoComplete="off"
            {...rest}
            {...wiring}
            value={shown}
            onChange={(e) => {
              setTyping(true);
              onText(e.target.value);
            }}
            onBlur={() => setTyping(false)}
          />
          {unit !== undefined && <span className="unit">{unit}</span>}
        </span>
      )}
    </Field>
  );
}
