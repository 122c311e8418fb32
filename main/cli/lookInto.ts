import { openStore } from "../store/open.ts";
import { StoreError } from "../store/StoreError.ts";
import { UsageError } from "./Command.ts";

/**
 * A first look at a data file, for reading: whether it is one of ours and can be read at all.
 * @returns  in words what is damaged so that nothing can be read, or undefined
 * @throws UsageError  a newer program's file, or demo data where real is meant, or the other way round
 */
export function lookInto(path: string, demo: boolean): string | undefined {
  try {
    openStore({ path, demo, readOnly: true, now: () => 0 }).close();
    return undefined;
  } catch (cause) {
    if (!(cause instanceof StoreError)) throw cause;
    if (cause.code === "damaged") return cause.message;
    throw new UsageError(cause.message);
  }
}
