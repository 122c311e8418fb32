import type { Client } from "../client/Client.ts";
import { askingClient } from "./askingClient.ts";
import { createAskStore } from "./askStore.ts";
import type { Core } from "./Core.ts";
import { createDraftStore } from "./draftStore.ts";
import { hearPushes } from "./hearPushes.ts";
import { createJobsStore } from "./jobsStore.ts";
import { createLinkStore } from "./linkStore.ts";
import { createLiveStore } from "./liveStore.ts";
import { createProgramStore } from "./programStore.ts";
import { createProofStore } from "./proofStore.ts";
import { createRegisterStore } from "./registerStore.ts";
import { StripBuffer } from "./StripBuffer.ts";
import { takeSnapshot } from "./takeSnapshot.ts";
import { createToastStore } from "./toastStore.ts";

/** More than the strip shows: at 100 readings a second three minutes, of a fast gauge as many as it can draw. */
const STRIP_READINGS = 20_000;

/** The page's stores, fed from the client; the first snapshot is asked for at once. */
export function createCore(client: Client, loadAnew: () => void): Core {
  const ask = createAskStore();
  const core: Core = {
    client: askingClient(client, ask),
    ask,
    program: createProgramStore(),
    link: createLinkStore(),
    live: createLiveStore(),
    strip: new StripBuffer(STRIP_READINGS),
    draft: createDraftStore(),
    proof: createProofStore(),
    register: createRegisterStore(),
    jobs: createJobsStore(),
    toasts: createToastStore(),
    loadAnew,
    refresh: () => takeSnapshot(core),
  };
  client.onConnection((connection) => core.program.setState({ connection }));
  client.onGap(() => core.refresh());
  hearPushes(core);
  return core;
}
