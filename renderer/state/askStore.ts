import { createStore } from "zustand/vanilla";
import type { Asked } from "../../app/contract/result.ts";

/** A question the program put before an act: who it is, whose act it may be, or a PIN. */
export type Ask = {
  readonly asks: Asked;
  /** `true`: answered, the act is tried again. */
  readonly settle: (again: boolean) => void;
};

/** The one question that is open. */
export type AskState = { readonly open: Ask | undefined };

export const createAskStore = () => createStore<AskState>(() => ({ open: undefined }));
