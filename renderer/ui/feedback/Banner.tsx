import type { ReactNode } from "react";
import "./feedback.css";

/** A line across the top: where one is, or what keeps one from working. `loud` is read out at once. */
export function Banner({
  children,
  act,
  loud = false,
}: {
  readonly children: ReactNode;
  readonly act?: ReactNode;
  readonly loud?: boolean;
}) {
  return (
    <div className={loud ? "banner loud" : "banner"} role={loud ? "alert" : "status"}>
      <span>{children}</span>
      {act}
    </div>
  );
}
