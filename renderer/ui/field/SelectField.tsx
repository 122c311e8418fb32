import { Field, type FieldProps } from "./Field.tsx";

export type Option<V extends string> = { readonly value: V; readonly label: string };

/** One of a list. */
export function SelectField<V extends string>({
  label,
  hint,
  error,
  value,
  options,
  onChoose,
}: FieldProps & {
  readonly value: V;
  readonly options: readonly Option<V>[];
  readonly onChoose: (value: V) => void;
}) {
  return (
    <Field label={label} hint={hint} error={error}>
      {(wiring) => (
        // The options are the only values the element can have.
        <select {...wiring} value={value} onChange={(e) => onChoose(e.target.value as V)}>
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
