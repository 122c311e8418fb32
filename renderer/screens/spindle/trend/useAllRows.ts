import { useEffect, useMemo, useState } from "react";
import type { CheckRow, SpindlePage } from "../../../../app/contract/recordViews.ts";
import { useCore } from "../../../state/CoreContext.ts";

const MOST_ROWS = 500;

/** The rows behind the trend's points: those of the page, and earlier ones where the trend reaches farther back. */
export function useAllRows(page: SpindlePage): readonly CheckRow[] {
  const core = useCore();
  const [earlier, setEarlier] = useState<readonly CheckRow[]>([]);
  const { spindleId } = page.row.spindle;
  const missing = page.moreChecks ? page.checks.at(-1)?.checkId : undefined;
  useEffect(() => {
    let gone = false;
    setEarlier([]);
    if (missing === undefined) return;
    core.client.call("checks.list", { spindleId, after: missing, limit: MOST_ROWS }).then((answer) => {
      if (answer.ok && !gone) setEarlier(answer.value.rows);
    });
    return () => {
      gone = true;
    };
  }, [core, spindleId, missing]);
  return useMemo(() => (earlier.length === 0 ? page.checks : [...page.checks, ...earlier]), [page.checks, earlier]);
}
