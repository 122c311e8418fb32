import type { ReactNode } from "react";
import "./feedback.css";

/** An empty place says what belongs there and how to begin. */
export function EmptyState({
  title,
  children,
  act,
}: {
  readonly title: string;
  readonly children: ReactNode;
  readonly act?: ReactNode;
}) {
  return (
    <section className="empty sheet">
      <h2>{title}</h2>
      <p className="why">{children}</p>
      {act !== undefined && <div className="row">{act}</div>}
    </section>
  );
}
