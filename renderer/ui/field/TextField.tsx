import type { InputHTMLAttributes } from "react";
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
  return (
    <Field label={label} hint={hint} error={error}>
      {(wiring) => (
        <span className={wide ? "input wide" : "input"}>
          <input autoComplete="off" {...rest} {...wiring} value={value} onChange={(e) => onText(e.target.value)} />
          {unit !== undefined && <span className="unit">{unit}</span>}
        </span>
      )}
    </Field>
  );
}
