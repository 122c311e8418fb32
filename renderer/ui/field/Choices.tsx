import { useId } from "react";
import type { Option } from "./SelectField.tsx";
import "./field.css";

/** One of a few, all in sight, each a target for a gloved finger. */
export function Choices<V extends string>({
  label,
  value,
  options,
  onChoose,
  hideLabel = false,
}: {
  readonly label: string;
  readonly value: V | undefined;
  readonly options: readonly Option<V>[];
  readonly onChoose: (value: V) => void;
  readonly hideLabel?: boolean;
}) {
  const name = useId();
  return (
    <fieldset className="choices">
      <legend className={hideLabel ? "unseen" : undefined}>{label}</legend>
      <div>
        {options.map((option) => (
          <label key={option.value}>
            <input
              type="radio"
              name={name}
              value={option.value}
              checked={option.value === value}
              onChange={() => onChoose(option.value)}
            />
            <span>{option.label}</span>
          </label>
        ))}
      </div>
    </fieldset>
  );
}
