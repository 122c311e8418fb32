import { TextField } from "../../ui/field/TextField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { peopleTexts } from "./peopleTexts.ts";
import "./people.css";

const LONGEST = 8;
const digits = ["1", "2", "3", "4", "5", "6", "7", "8", "9"] as const;

/** A PIN by keyboard, or on a pad whose keys a glove can hit. The form around it takes it with Enter or the last key. */
export function PinEntry({
  label,
  value,
  onText,
  error,
  go,
}: {
  readonly label: string;
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly error: string | undefined;
  /** What the last key says. */
  readonly go: string;
}) {
  const words = useWords(peopleTexts);
  const set = (text: string) => onText(text.replace(/\D/g, "").slice(0, LONGEST));
  const key = (digit: string) => (
    <button key={digit} type="button" onMouseDown={(e) => e.preventDefault()} onClick={() => set(value + digit)}>
      {digit}
    </button>
  );
  return (
    <div className="pin-entry">
      <TextField
        label={label}
        type="password"
        inputMode="none" // the pad below is there for fingers
        maxLength={LONGEST}
        value={value}
        onText={set}
        error={error}
      />
      <div className="pad">
        {digits.map(key)}
        <button
          type="button"
          aria-label={words.pinDelete}
          onMouseDown={(e) => e.preventDefault()}
          onClick={() => set(value.slice(0, -1))}
        >
          ⌫
        </button>
        {key("0")}
        <button type="submit" className="go" onMouseDown={(e) => e.preventDefault()}>
          {go}
        </button>
      </div>
    </div>
  );
}
