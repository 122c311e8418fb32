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
  } else if (core.program.getState().connection === "open") {
    setTimeout(() => takeSnapshot(core), AGAIN_MS);
  }
}

function applySnapshot(core: Core, snapshot: Snapshot): void {
  const { program, works, settings, link, live, draft, undo } = snapshot;
  core.program.setState({ program, works, settings, undo });
  core.link.setState({ link });
  core.live.setState({ live });
  core.draft.setState({ draft });
  core.jobs.setState({ jobs: Object.fromEntries(snapshot.jobs.map((job) => [job.jobId, job])) });
  // Anything may have changed while we did not listen.
  core.register.setState(({ stale }) => ({
    stale: Object.fromEntries(Object.entries(stale).map(([list, n]) => [list, n + 1])) as Record<ListName, number>, // same keys
  }));
}
