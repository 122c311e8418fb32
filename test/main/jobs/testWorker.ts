import { fileURLToPath } from "node:url";
import { z } from "zod";
import { defineJob, type JobLoaders } from "../../../main/jobs/Job.ts";
import { runOrder } from "../../../main/jobs/runOrder.ts";
import { StoreError } from "../../../main/store/StoreError.ts";

/** Jobs made to be looked at: one that counts until it is stopped, and ones that go wrong. */
const loaders: JobLoaders = {
  verify: () =>
    load(
      defineJob({
        args: z.strictObject({ rebuild: z.boolean().default(false) }),
        run(_, { goOn, progress }) {
          for (let i = 0; ; i += 1) {
            goOn();
            progress(i);
          }
        },
      }),
    ),
  restore: () =>
    load(
      defineJob({
        files: true,
        args: z.strictObject({ from: z.string(), to: z.string() }),
        run(_, { openStore }) {
          const store = openStore();
          store.append([{ kind: "attachment", body: { name: "by a job" } }], {
            alsoInTransaction: () => Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 300),
          });
        },
      }),
    ),
  backup: () =>
    load(
      defineJob({
        args: z.strictObject({ folder: z.string() }),
        run({ folder }) {
          if (folder === "store") throw new StoreError("full", "The disk is full.");
          if (folder === "exit") process.exit(3);
          throw new TypeError("a fault of the program");
        },
      }),
    ),
};

const load = async (job: Awaited<ReturnType<JobLoaders[string]>>["job"]) => ({ job });

await runOrder(loaders, fileURLToPath(import.meta.url));
