import type { ReactNode } from "react";
import "./feedback.css";

/** Long work: how far it is, and the way to end it. */
export function Progress({
  label,
  done,
  total,
  act,
}: {
  readonly label: string;
  readonly done: number;
  readonly total: number | undefined;
  readonly act?: ReactNode;
}) {
  return (
    <div className="progress">
      <label>
        <span>{label}</span>
        <progress value={total === undefined ? undefined : done} max={total} />
      </label>
      {act}
    </div>
  );
}
