import { renameSync } from "node:fs";
import { swapBack, swapIn } from "./store/copies/swapIn.ts";

export type PutInPlace<S> = {
  readonly restored: string;
  readonly dataFile: string;
  readonly nowMs: number;
  /** The file in use could only be read. */
  readonly damaged: boolean;
  readonly close: () => Promise<void>;
  /** @param kept  where the old file lies, when the restored one is opened */
  readonly open: (kept?: string) => Promise<S>;
};

/**
 * Closes the data file, puts the restored one in its place and opens that. Whatever goes wrong, what is open at the end
 * is a whole file: the restored one, or the one that was in use.
 * @returns  what is open now, and where the old file is kept; without `kept` the old one was opened again, for `cause`
 */
export async function putInPlace<S>(
  options: PutInPlace<S>,
): Promise<{ readonly opened: S; readonly kept: string } | { readonly opened: S; readonly cause: unknown }> {
  const { restored, dataFile, nowMs, damaged, close, open } = options;
  await close();
  let kept: string | undefined;
  try {
    kept = swapIn(restored, dataFile, nowMs, { damaged });
    return { opened: await open(kept), kept };
  } catch (cause) {
    if (kept !== undefined) {
      renameSync(dataFile, restored);
      swapBack(kept, dataFile);
    }
    return { opened: await open(), cause };
  }
}
