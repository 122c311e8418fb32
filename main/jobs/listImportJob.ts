import { type Imported, listFile } from "../../app/contract/importViews.ts";
import { id } from "../../app/ledger/fields.ts";
import { ImportStopped, importFile } from "../import/importFile.ts";
import { programVersion } from "../programVersion.ts";
import { defineJob } from "./Job.ts";
import { JobError } from "./JobError.ts";

/** Takes a list into the register, or old checks into the histories: all of it in one transaction, or nothing. */
export const job = defineJob({
  files: true,
  args: listFile.extend({ operatorId: id.optional() }),
  async run({ operatorId, ...file }, { openStore, goOn, progress }): Promise<Imported> {
    try {
      return await importFile(openStore(), file, { nowMs: Date.now(), programVersion, operatorId, goOn, progress });
    } catch (cause) {
      if (cause instanceof ImportStopped) throw new JobError("badRequest", cause.message);
      throw cause;
    }
  },
});
