import { join } from "node:path";
import type { Handlers } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import { proofData } from "../report/proof/proofData.ts";
import type { Context } from "./Context.ts";
import { programView } from "./program.ts";
import { today } from "./today.ts";

type Part = Pick<Handlers, "reports.make" | "proofs.data" | "records.export" | "records.import" | "program.validate">;

/** Lists that an archive's records may change. */
const LISTS = ["spindles", "adapters", "gauges", "operators", "works", "patterns"] as const;

/** Records out and in again, on paper and as archives, and the program's own proof: each a job. */
export function reportHandlers(context: Context): Part {
  const { store, jobs, hub } = context;

  /** A report prints the heads with their signatures, so they are signed as they stand now. */
  const signed = () => {
    if (store.refusal === undefined) store.signHeads();
  };

  return {
    "reports.make": (order) => {
      signed();
      return { jobId: jobs.start("report", order) };
    },
    "proofs.data": ({ proofId, as }) => {
      const data = proofData(store.db, proofId, as);
      if (data === undefined)
        throw new AppError("notFound", "There is no such proof in this data file.", { key: "noProof" });
      return data;
    },
    "records.export": ({ folder, waveforms }) => {
      signed();
      const time = new Date(context.now()).toISOString().slice(11, 19).replaceAll(":", "");
      const name = `${store.demo ? "holdfast-demo" : "holdfast"}-${today(context)}-${time}.zip`;
      return {
        jobId: jobs.start("export", {
          file: join(folder, name),
          waveforms,
          salvage: store.refusal?.code === "damaged",
        }),
      };
    },
    "records.import": (input) => {
      const { jobId, ended } = jobs.begin("import", input);
      ended.then(
        () => {
          for (const what of LISTS) hub.say("register.changed", { what });
          hub.say("program.changed", programView(context));
          context.series.refresh();
        },
        () => {}, // `job.finished` has told
      );
      return { jobId };
    },
    "program.validate": (input) => ({ jobId: jobs.start("validate", input) }),
  };
}
