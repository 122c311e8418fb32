import { Component, type ErrorInfo, type ReactNode } from "react";

type Props = {
  readonly children: ReactNode;
  /** What stands in the screen's place; `again` tries it anew. */
  readonly fallback: (again: () => void) => ReactNode;
};

/** Keeps a fault of one screen from taking the others with it. A class, since React has no other form for this. */
export class ScreenBoundary extends Component<Props, { readonly failed: boolean }> {
  override state = { failed: false };

  static getDerivedStateFromError() {
    return { failed: true };
  }

  override componentDidCatch(cause: unknown, info: ErrorInfo): void {
    console.error("a screen failed", cause, info.componentStack);
  }

  override render(): ReactNode {
    if (!this.state.failed) return this.props.children;
    return this.props.fallback(() => this.setState({ failed: false }));
  }
}
