import type { JobView } from "../../app/contract/programViews.ts";
import type { SpindleRow } from "../../app/contract/recordViews.ts";
import type { Core } from "./Core.ts";
import { type ListName, withRow } from "./registerStore.ts";

/** Every push into its store. */
export function hearPushes(core: Core): void {
  const { client, register } = core;
  const spoil = (...lists: ListName[]) =>
    register.setState(({ stale }) => {
      const next = { ...stale };
      for (const list of lists) next[list] += 1;
      return { stale: next };
    });
  const spindle = (row: SpindleRow) => {
    register.setState(({ spindles }) => ({ spindles: withRow(spindles, row, (r) => r.spindle.spindleId) }));
    spoil("fleet");
  };
  const job = (view: JobView) => core.jobs.setState(({ jobs }) => ({ jobs: { ...jobs, [view.jobId]: view } }));

  client.on("readings.arrived", (batch) => {
    core.strip.push(batch);
    core.live.setState({ live: batch.live });
  });
  client.on("cycle.closed", ({ cycle }) => core.strip.cycles.add(cycle.cycleId));
  client.on("link.changed", (link) => core.link.setState({ link }));
  client.on("draft.changed", (draft) => core.draft.setState({ draft }));
  client.on("check.filed", ({ row, spindle: changed, undoUntilMs }) => {
    core.program.setState({ undo: { checkId: row.checkId, untilMs: undoUntilMs } });
    spindle(changed);
  });
  client.on("spindle.changed", spindle);
  client.on("register.changed", ({ what }) => {
    if (what === "works") core.refresh();
    else if (what === "spindles") spoil("spindles", "fleet");
    else if (what !== "patterns") spoil(what);
  });
  client.on("proof.changed", ({ proof }) =>
    core.proof.setState((before) => ({
      proof,
      asked: true,
      heard: before.heard + 1,
      watch: proof?.proofId === before.watch?.proofId ? before.watch : undefined,
    })),
  );
  client.on("proof.watched", (watch) => core.proof.setState({ watch }));
  client.on("proofs.changed", ({ what }) => {
    if (what === "references" || what === "plans" || what === "tables") spoil(what);
    else spoil("gauges", "adapters"); // their rows say when they were proved
  });
  client.on("settings.changed", (settings) => core.program.setState({ settings }));
  client.on("backup.changed", (backup) => core.program.setState({ backup }));
  client.on("program.changed", (program) => {
    const before = core.program.getState().program;
    core.program.setState({ program });
    const same = (["demo", "dataFile", "origin"] as const).every((what) => before?.[what] === program[what]);
    if (before !== undefined && !same) core.loadAnew();
  });
  client.on("job.progressed", job);
  client.on("job.finished", job);
}
