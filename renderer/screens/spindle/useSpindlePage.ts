import { useCallback, useEffect, useState } from "react";
import { useStore } from "zustand";
import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { Failure } from "../../../app/contract/result.ts";
import { useCore } from "../../state/CoreContext.ts";

/** One spindle's page, asked for again when its row changes under it. */
export function useSpindlePage(spindleId: string): {
  readonly page: SpindlePage | undefined;
  readonly failed: Failure | undefined;
  readonly again: () => Promise<void>;
} {
  const core = useCore();
  const [page, setPage] = useState<SpindlePage>();
  const [failed, setFailed] = useState<Failure>();
  const row = useStore(core.register, (state) => state.spindles?.find((one) => one.spindle.spindleId === spindleId));
  const stale = useStore(core.register, (state) => state.stale.spindles);
  const again = useCallback(async () => {
    const answer = await core.client.call("spindles.page", { spindleId });
    if (answer.ok) {
      setPage(answer.value);
      setFailed(undefined);
    } else setFailed(answer.error);
  }, [core, spindleId]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the row and the count of changes are why it is asked for again
  useEffect(() => {
    again();
  }, [again, row, stale]);
  return { page, failed, again };
}
