import type { Handlers } from "../../../app/contract/methods.ts";
import type { JobView } from "../../../app/contract/programViews.ts";
import { nothingLive } from "../../../renderer/state/liveStore.ts";
import type { FakeState } from "../fakeCore.ts";

type Names =
  | "state.snapshot"
  | "settings.save"
  | "program.openDemo"
  | "program.leaveDemo"
  | "records.verify"
  | "records.backup"
  | "records.export"
  | "records.import"
  | "reports.make"
  | "proofs.data"
  | "program.validate"
  | "job.stop";

export function programHandlers(state: FakeState): Pick<Handlers, Names> {
  const job = (what: string, result: unknown): { jobId: string } => {
    const jobId = `job-${state.jobs.length + 1}`;
    const view: JobView = { jobId, what, done: 0, total: 4, state: "running", message: undefined, result: undefined };
    state.jobs.push(view);
    state.say("job.progressed", view);
    state.say("job.finished", { ...view, done: 4, state: "finished", result });
    return { jobId };
  };
  return {
    "state.snapshot": () => ({
      seq: state.seq(),
      program: state.program,
      works: state.works,
      settings: state.settings,
      link: state.link,
      live: nothingLive,
      draft: state.series.draft,
      undo: state.undo,
      jobs: state.jobs,
      backup: state.backup,
    }),
    "settings.save": (input) => {
      state.settings = { ...state.settings, ...input };
      state.say("settings.changed", state.settings);
      return state.settings;
    },
    "program.openDemo": () => {
      state.program = { ...state.program, demo: true, empty: false };
      state.say("program.changed", state.program);
      return state.program;
    },
    "program.leaveDemo": () => {
      state.program = { ...state.program, demo: false };
      state.say("program.changed", state.program);
      return state.program;
    },
    "records.verify": () => job("verify", { entries: 1_204, damaged: [] }),
    "records.backup": ({ folder }) => job("backup", { file: `${folder}/holdfast-2026-11-16.db` }),
    "records.export": ({ folder }) =>
      job("export", {
        file: `${folder}/holdfast.zip`,
        bytes: 2_100_000,
        entries: 1_204,
        waveforms: 4_400,
        heads: [],
        leftOut: 0,
      }),
    "records.import": ({ file }) => job("import", { file, added: 900, entries: 1_204, heads: [] }),
    "proofs.data": ({ as }) => ({ ...fakePdf(`proof.${as}`), mime: as === "csv" ? "text/csv" : "application/json" }),
    "reports.make": ({ what }) => job("report", fakePdf(`${what}.pdf`)),
    "program.validate": () =>
      job("validate", {
        program: "0.1.0",
        programHash: "ab".repeat(32),
        cases: Array.from({ length: 354 }, () => ({})),
        failed: [],
        report: fakePdf("validation.pdf"),
      }),
    "job.stop": ({ jobId }) => ({ ...state.jobs.find((one) => one.jobId === jobId)!, state: "stopped" }),
  };
}

const fakePdf = (fileName: string) => ({
  fileName,
  mime: "application/pdf",
  base64: Buffer.from("%PDF-1.7").toString("base64"),
});
