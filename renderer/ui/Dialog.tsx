import { type ReactNode, useEffect, useId, useRef } from "react";
import "./dialog.css";

/**
 * A question over the page. The platform's own dialog: it keeps the focus inside, closes on Escape, gives the focus back.
 * @param onClose  dismissed without an act
 */
export function Dialog({
  title,
  children,
  acts,
  onClose,
  onSubmit,
  wide = false,
}: {
  readonly title: string;
  readonly children: ReactNode;
  /** The buttons, the act first. */
  readonly acts: ReactNode;
  readonly onClose: () => void;
  readonly onSubmit?: () => void;
  readonly wide?: boolean;
}) {
  const dialog = useRef<HTMLDialogElement>(null);
  const titleId = useId();
  useEffect(() => {
    const element = dialog.current!; // there from the first commit on
    element.showModal();
    // The platform would focus the scrolling part; the first field is what one wants to fill in.
    element.querySelector<HTMLElement>(".body :is(input, select, textarea, [data-first]), .acts button")?.focus();
    return () => element.close();
  }, []);
  return (
    <dialog
      ref={dialog}
      className={wide ? "wide" : undefined}
      aria-labelledby={titleId}
      onCancel={(event) => {
        event.preventDefault(); // React takes it away, not the platform
        onClose();
      }}
    >
      <form
        method="dialog"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          onSubmit?.();
        }}
      >
        <h2 id={titleId}>{title}</h2>
        <div className="body">{children}</div>
        <div className="row acts">{acts}</div>
      </form>
    </dialog>
  );
}
