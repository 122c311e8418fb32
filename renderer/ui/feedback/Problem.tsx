import type { ReactNode } from "react";
import "./feedback.css";

/** Something did not work: what happened, what is safe, what to do. */
export function Problem({ children, act }: { readonly children: ReactNode; readonly act?: ReactNode }) {
  return (
    <div className="problem" role="alert">
      <span>{children}</span>
      {act}
    </div>
  );
}
