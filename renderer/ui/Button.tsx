import type { ButtonHTMLAttributes, ReactNode } from "react";
import { type ActIcon, actIcons } from "./actIcons.ts";
import "./button.css";

type ButtonProps = Omit<ButtonHTMLAttributes<HTMLButtonElement>, "type" | "className"> & {
  readonly children: ReactNode;
  /** `main`: the one act of the screen. `plain`: beside it. `quiet`: words only. */
  readonly kind?: "main" | "plain" | "quiet";
  /** A picture beside the words. */
  readonly icon?: ActIcon | undefined;
  /** The key that does the same, shown beside the words. */
  readonly keyHint?: string | undefined;
  readonly type?: "button" | "submit";
  /** In work: it stays where it is and does nothing more. */
  readonly busy?: boolean;
};

/**
 * A button says what it will do. Pressed with a pointer it does not take the focus, so that the space bar or a footswitch pressed
 * next means the screen's own act and not this button a second time.
 */
export function Button({
  children,
  kind = "plain",
  icon,
  keyHint,
  type = "button",
  busy = false,
  ...rest
}: ButtonProps) {
  const Icon = icon && actIcons[icon];
  return (
    <button
      {...rest}
      type={type}
      className={`button ${kind}`}
      aria-disabled={busy || undefined}
      aria-keyshortcuts={keyHint}
      onMouseDown={(event) => event.preventDefault()}
      onClick={busy ? undefined : rest.onClick}
    >
      {Icon !== undefined && <Icon size={18} strokeWidth={2} aria-hidden="true" />}
      <span>{children}</span>
      {keyHint !== undefined && (
        <span className="key" aria-hidden="true">
          {keyHint}
        </span>
      )}
    </button>
  );
}
