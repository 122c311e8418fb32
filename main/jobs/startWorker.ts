import { Worker } from "node:worker_threads";
import { JobError } from "./JobError.ts";
import type { JobMessage, JobOrder } from "./messages.ts";

/** Starts a worker on an order; the promise settles when it ends. */
export function startWorker(
  file: URL | string,
  order: JobOrder,
  onProgress: (done: number, total: number | undefined) => void,
): Promise<unknown> {
  return new Promise((resolve, reject) => {
    const worker = new Worker(file, { workerData: order });
    worker.on("message", (message: JobMessage) => {
      if (message.say === "progress") onProgress(message.done, message.total);
      else if (message.say === "done") resolve(message.result);
      else reject(new JobError(message.code, message.message, message.trace));
    });
    worker.on("error", (cause) => reject(new JobError("internal", `${order.name} broke off`, cause)));
    worker.on("exit", (code) => reject(new JobError("internal", `${order.name} ended early (${code})`))); // no-op when settled
  });
}
