import { ZodError } from "zod";
import { AppError, type ErrorCode, type Failure } from "../../app/contract/result.ts";
import { JobError } from "../jobs/JobError.ts";
import { LinkError } from "../link/LinkProblem.ts";
import { StoreError, type StoreFault } from "../store/StoreError.ts";

const ofStore: Readonly<Record<StoreFault, ErrorCode>> = {
  full: "diskFull",
  readOnly: "readOnly",
  damaged: "damaged",
  notFound: "notFound",
  locked: "conflict",
  busy: "conflict",
  conflict: "conflict",
  newer: "refused",
  networkShare: "refused",
  demoMismatch: "refused",
};

/** What a room refused, as it crosses the border; undefined for a fault of the program, which goes to the log. */
export function faultOfCause(cause: unknown): Failure | undefined {
  if (cause instanceof AppError) {
    return {
      code: cause.code,
      message: cause.message,
      ...(cause.key === undefined ? {} : { key: cause.key }),
      ...(cause.figures === undefined ? {} : { figures: cause.figures }),
      ...(cause.field === undefined ? {} : { field: cause.field }),
      ...(cause.asks === undefined ? {} : { asks: cause.asks }),
    };
  }
  if (cause instanceof StoreError)
    return { code: ofStore[cause.code], message: cause.message, key: `store.${cause.code}` };
  if (cause instanceof LinkError) return { code: "link", message: cause.message, key: `link.${cause.code}` };
  if (cause instanceof JobError) return ofJob(cause);
  if (cause instanceof ZodError) {
    const issue = cause.issues[0];
    return {
      code: "invalid",
      message: issue?.message ?? "The record is not complete.",
      field: issue?.path.map(String).join(".") ?? "",
    };
  }
  return undefined;
}

/** Long work whose caller waits for its result: stopped by a hand, or what its own connection met. */
function ofJob({ code, message }: JobError): Failure | undefined {
  if (code === "stopped") return { code: "refused", message: "Stopped. Nothing was changed.", key: "jobStopped" };
  if (code === "internal" || code === "badRequest") return undefined;
  return { code: ofStore[code], message, key: `store.${code}` };
}
