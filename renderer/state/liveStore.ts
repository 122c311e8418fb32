import { createStore } from "zustand/vanilla";
import type { LiveView } from "../../app/contract/seriesViews.ts";

/** The last value of each batch; what lies between goes to the strip and never through here. */
export type LiveState = { readonly live: LiveView };

export const nothingLive: LiveView = Object.freeze({
  forceN: undefined,
  word: "none",
  greatestN: undefined,
  zeroN: undefined,
  holdingS: undefined,
});

export const createLiveStore = () => createStore<LiveState>(() => ({ live: nothingLive }));
