import { createStore } from "zustand/vanilla";
import type { ProofWatch, RunningProof } from "../../app/contract/proofViews.ts";

/** The proof in work. It lives in the core; the page only shows it. */
export type ProofState = {
  readonly proof: RunningProof | undefined;
  /** Steadiness and time left of the next reading, as last heard. */
  readonly watch: ProofWatch | undefined;
  /** The core has said whether there is one. */
  readonly asked: boolean;
  /** Rises with every word about it, so that an answer on its way does not overwrite a later one. */
  readonly heard: number;
};

export const createProofStore = () =>
  createStore<ProofState>(() => ({ proof: undefined, watch: undefined, asked: false, heard: 0 }));
