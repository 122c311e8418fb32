import type { ReactNode } from "react";
import "./field.css";

/** On or off. */
export function Tick({
  children,
  checked,
  onTick,
}: {
  readonly children: ReactNode;
  readonly checked: boolean;
  readonly onTick: (checked: boolean) => void;
}) {
  return (
    <label className="tick">
      <input type="checkbox" checked={checked} onChange={(e) => onTick(e.target.checked)} />
      <span>{children}</span>
    </label>
  );
}
