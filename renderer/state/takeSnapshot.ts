import type { Snapshot } from "../../app/contract/programViews.ts";
import type { Core } from "./Core.ts";
import type { ListName } from "./registerStore.ts";

const AGAIN_MS = 1_000;

/** Asks for everything at once and shows it. Tried again while the program stands but cannot answer. */
export async function takeSnapshot(core: Core): Promise<void> {
  const answer = await core.client.call("state.snapshot", {});
  if (answer.ok) {
    applySnapshot(core, answer.value);
    core.client.caughtUp(answer.value.seq);
    await askForProof(core);
  } else if (core.program.getState().connection === "open") {
    setTimeout(() => takeSnapshot(core), AGAIN_MS);
  }
}

/** The proof in work, if there is one; what was pushed meanwhile is newer than the answer. */
async function askForProof(core: Core): Promise<void> {
  const { heard } = core.proof.getState();
  const answer = await core.client.call("proof.state", {});
  if (!answer.ok) return;
  core.proof.setState((now) => (now.heard === heard ? { proof: answer.value.proof, asked: true } : { asked: true }));
}

function applySnapshot(core: Core, snapshot: Snapshot): void {
  const { program, works, settings, link, live, draft, undo, backup } = snapshot;
  core.program.setState({ program, works, settings, undo, backup });
  core.link.setState({ link });
  core.live.setState({ live });
  core.draft.setState({ draft });
  core.jobs.setState({ jobs: Object.fromEntries(snapshot.jobs.map((job) => [job.jobId, job])) });
  // Anything may have changed while we did not listen.
  core.register.setState(({ stale }) => ({
    stale: Object.fromEntries(Object.entries(stale).map(([list, n]) => [list, n + 1])) as Record<ListName, number>, // same keys
  }));
}
