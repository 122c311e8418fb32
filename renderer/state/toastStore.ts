import { createStore } from "zustand/vanilla";

/** A short word about what was just done, with the one act that takes it back. */
export type Toast = {
  readonly id: number;
  readonly text: string;
  readonly act?: { readonly label: string; readonly run: () => void; readonly keyHint?: string } | undefined;
  /** When it goes by itself; wall clock, ms. */
  readonly untilMs: number;
};

export type ToastState = {
  readonly toasts: readonly Toast[];
  readonly show: (toast: Omit<Toast, "id">) => number;
  readonly dismiss: (id: number) => void;
};

/** More than these at once hide the screen: the oldest goes. */
const MOST = 3;

export const createToastStore = () => {
  let lastId = 0;
  return createStore<ToastState>((set) => ({
    toasts: [],
    show: (toast) => {
      lastId += 1;
      const id = lastId;
      set(({ toasts }) => ({ toasts: [...toasts, { ...toast, id }].slice(-MOST) }));
      return id;
    },
    dismiss: (id) => set(({ toasts }) => ({ toasts: toasts.filter((toast) => toast.id !== id) })),
  }));
};
