import { Field, type FieldProps } from "./Field.tsx";

/** Several lines of text. */
export function NoteField({
  label,
  hint,
  error,
  value,
  onText,
  rows = 3,
  onBlur,
}: FieldProps & {
  readonly value: string;
  readonly onText: (text: string) => void;
  readonly rows?: number;
  readonly onBlur?: () => void;
}) {
  return (
    <Field label={label} hint={hint} error={error}>
      {(wiring) => (
        <textarea {...wiring} rows={rows} value={value} onBlur={onBlur} onChange={(e) => onText(e.target.value)} />
      )}
    </Field>
  );
}
