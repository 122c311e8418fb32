import type { ReactNode } from "react";
import "./feedback.css";

/** What can hurt, where the hand is about to act. */
export function Caution({ title, children }: { readonly title: string; readonly children: ReactNode }) {
  return (
    <div className="caution">
      <b>{title}</b> {children}
    </div>
  );
}
