import { type Handlers, type MethodName, methods } from "../../app/contract/methods.ts";
import type { ErrorCode, Result } from "../../app/contract/result.ts";
import type { Log } from "../log.ts";
import { faultOfCause } from "./faultOfCause.ts";

/**
 * The one door into the services. Both hosts call it; neither knows a method by name. It never throws:
 * what the operator should know comes back as a failure, what only we should know goes to the log.
 */
export async function dispatch(handlers: Handlers, name: unknown, raw: unknown, log: Log): Promise<Result<unknown>> {
  if (typeof name !== "string" || !Object.hasOwn(methods, name)) {
    return failure("badRequest", `There is no call named ${String(name).slice(0, 60)}.`);
  }
  const method = name as MethodName; // hasOwn has just shown it
  const input = methods[method].input.safeParse(raw ?? {});
  if (!input.success) {
    const issue = input.error.issues[0]!;
    return failure("invalid", issue.message, issue.path.map(String).join("."));
  }
  // The schema has vouched for the input; the compiler cannot pair handler and input by name.
  const handle = handlers[method] as (input: unknown) => unknown;
  const startedAt = performance.now();
  try {
    return { ok: true, value: (await handle(input.data)) ?? null };
  } catch (cause) {
    const known = faultOfCause(cause);
    if (known !== undefined) return { ok: false, error: known };
    log.error(`${name} failed`, cause);
    return failure(
      "internal",
      `The program could not do this (${name}). What was filed is safe. Try again; if it stays, collect the log for support.`,
    );
  } finally {
    const tookMs = performance.now() - startedAt;
    if (tookMs > 50) log.warn(`${name} took ${Math.round(tookMs)} ms`);
  }
}

function failure(code: ErrorCode, message: string, field?: string): Result<never> {
  return { ok: false, error: { code, message, ...(field === undefined ? {} : { field }) } };
}
