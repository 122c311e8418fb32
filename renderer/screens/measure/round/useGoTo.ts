import { useCallback, useState } from "react";
import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useReport } from "../../shell/useReport.ts";
import { changeSeries } from "../acts.ts";

export type Place = { readonly spindleId: string; readonly name: string };

/** Tagging another spindle while a round leads: what is measured and not filed is asked about first. */
export function useGoTo(): {
  /** Answers whether the series is tagged with it now; a question may stand open instead. */
  readonly goTo: (place: Place) => Promise<boolean>;
  readonly moved: Place | undefined;
  readonly settle: (how: "theirs" | "discard" | "stay") => void;
} {
  const core = useCore();
  const report = useReport();
  const [moved, setMoved] = useState<Place>();
  const tag = useCallback(
    async ({ spindleId }: Place) => (await report(changeSeries(core, "series.tag", { spindleId }))) !== undefined,
    [core, report],
  );
  const goTo = useCallback(
    async (place: Place) => {
      const { draft } = core.draft.getState();
      if (draft !== undefined && isUnfiledElsewhere(draft, place)) {
        setMoved(place);
        return false;
      }
      return tag(place);
    },
    [core, tag],
  );
  const settle = async (how: "theirs" | "discard" | "stay") => {
    setMoved(undefined);
    if (moved === undefined || how === "stay") return;
    if (how === "discard" && (await report(changeSeries(core, "series.clear", {}))) === undefined) return;
    await tag(moved);
  };
  return { goTo, moved, settle };
}

function isUnfiledElsewhere({ roundId, tag, cycles, typed }: Draft, { spindleId }: Place): boolean {
  const unfiled = typed != null || cycles.some((cycle) => cycle.dropped === undefined);
  return roundId != null && unfiled && tag.spindleId != null && tag.spindleId !== spindleId;
}
