import type { ReactNode } from "react";
import { createPortal } from "react-dom";

/**
 * A dialog that is opened from inside a form, put beside it in the page: of a form within a form the browser drops the
 * submission, and what was to be saved is lost without a word. React still hands its submission up to the form around it.
 */
export function OverForm({ children }: { readonly children: ReactNode }) {
  return createPortal(children, document.body);
}
