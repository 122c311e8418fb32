import type { StoreApi } from "zustand/vanilla";
import type { Client } from "../client/Client.ts";
import type { AskState } from "./askStore.ts";
import type { DraftState } from "./draftStore.ts";
import type { JobsState } from "./jobsStore.ts";
import type { LinkState } from "./linkStore.ts";
import type { LiveState } from "./liveStore.ts";
import type { ProgramState } from "./programStore.ts";
import type { ProofState } from "./proofStore.ts";
import type { RegisterState } from "./registerStore.ts";
import type { StripBuffer } from "./StripBuffer.ts";
import type { ToastState } from "./toastStore.ts";

/** What the page knows of the program, and its way to it. One for the page's life; tests make their own. */
export type Core = {
  readonly client: Client;
  readonly ask: StoreApi<AskState>;
  readonly program: StoreApi<ProgramState>;
  readonly link: StoreApi<LinkState>;
  readonly live: StoreApi<LiveState>;
  readonly strip: StripBuffer;
  readonly draft: StoreApi<DraftState>;
  readonly proof: StoreApi<ProofState>;
  readonly register: StoreApi<RegisterState>;
  readonly jobs: StoreApi<JobsState>;
  readonly toasts: StoreApi<ToastState>;
  /** Another data file is open: nothing the page holds belongs to it, so it is loaded anew. */
  readonly loadAnew: () => void;
  /** Asks for the snapshot again, as after a gap. */
  readonly refresh: () => Promise<void>;
};
