import type { Handlers } from "../../../app/contract/methods.ts";
import type { FakeState } from "../fakeCore.ts";

type Names = Extract<keyof Handlers, `backup.${string}` | `restore.${string}`>;

const hours = 3_600_000;

export function backupHandlers(state: FakeState): Pick<Handlers, Names> {
  return {
    "backup.choose": ({ folder, keep }) => {
      state.backup = { ...state.backup, folder: folder ?? undefined, keep: keep ?? state.backup.keep, late: undefined };
      state.say("backup.changed", state.backup);
      return state.backup;
    },
    "backup.list": ({ folder }) =>
      [3, 27, 51].map((ago) => ({
        file: `${folder}/holdfast-3b1f0c52-${ago}.sqlite`,
        atMs: state.nowMs() - ago * hours,
        bytes: 3_400_000,
        own: true,
      })),
    "restore.try": ({ file }) => {
      const result = {
        file: "/home/you/Holdfast/restored-20261116T090000Z.sqlite",
        from: file,
        entries: 1_190,
        waveforms: 4_300,
        chains: [{ origin: state.program.origin!, here: 1_204, there: 1_190, same: 1_190 }],
        lost: 14,
        lostChecks: 12,
        newestAt: "2026-11-15T15:04:00.000Z",
      };
      state.say("job.finished", {
        jobId: "job-restore",
        what: "restore",
        done: 1,
        total: 1,
        state: "finished",
        message: undefined,
        result,
      });
      return { jobId: "job-restore" };
    },
    "restore.swap": () => ({ kept: "/home/you/Holdfast/before-restore-20261116T090000Z.sqlite" }),
    "restore.forget": () => ({ done: true }),
  };
}
