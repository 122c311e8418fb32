import { type ReactNode, useId } from "react";
import "./field.css";

export type FieldProps = {
  readonly label: string;
  readonly hint?: ReactNode;
  /** What is wrong with what stands in it; said aloud when it appears. */
  readonly error?: string | undefined;
};

/** Ties label, hint and error to whatever is filled in. */
export function Field({
  label,
  hint,
  error,
  children,
}: FieldProps & {
  readonly children: (wiring: {
    readonly id: string;
    readonly "aria-describedby": string | undefined;
    readonly "aria-invalid": true | undefined;
  }) => ReactNode;
}) {
  const id = useId();
  const described = [hint !== undefined && `${id}-hint`, error !== undefined && `${id}-error`]
    .filter(Boolean)
    .join(" ");
  return (
    <div className="field">
      <label htmlFor={id}>{label}</label>
      {children({
        id,
        "aria-describedby": described === "" ? undefined : described,
        "aria-invalid": error !== undefined || undefined,
      })}
      {hint !== undefined && (
        <small id={`${id}-hint`} className="hint">
          {hint}
        </small>
      )}
      <span role="alert" id={`${id}-error`} className="error" hidden={error === undefined}>
        {error}
      </span>
    </div>
  );
}
