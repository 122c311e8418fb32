import { useEffect, useState } from "react";
import type { SpindlePage } from "../../../../app/contract/recordViews.ts";
import { useCore } from "../../../state/CoreContext.ts";

/** The same page with its trend by tool changes, once that is wanted; asked for again when the page has changed. */
export function useCounterPage(page: SpindlePage, wanted: boolean): SpindlePage | undefined {
  const core = useCore();
  const [found, setFound] = useState<{ readonly of: SpindlePage; readonly page: SpindlePage }>();
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    const { spindleId } = page.row.spindle;
    core.client.call("spindles.page", { spindleId, xAxis: "counter" }).then((answer) => {
      if (answer.ok && !gone) setFound({ of: page, page: answer.value });
    });
    return () => {
      gone = true;
    };
  }, [core, page, wanted]);
  return wanted && found?.of === page ? found.page : undefined;
}
