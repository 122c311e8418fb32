import { createStore } from "zustand/vanilla";
import type { Draft } from "../../app/contract/seriesViews.ts";

/** The series in work. It lives in the core; the page only shows it. */
export type DraftState = {
  readonly draft: Draft | undefined;
  /** A filing is on its way: a second press does nothing. */
  readonly filing: boolean;
};

export const createDraftStore = () => createStore<DraftState>(() => ({ draft: undefined, filing: false }));
