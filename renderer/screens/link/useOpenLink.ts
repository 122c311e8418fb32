import { useCallback } from "react";
import type { Source } from "../../../app/contract/linkViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useReport } from "../shell/useReport.ts";
import { portMemory } from "./portMemory.ts";

/** Opens a way to a gauge; a port's setting is remembered for the next time. */
export function useOpenLink(): (source: Source, gaugeId?: string) => Promise<void> {
  const core = useCore();
  const report = useReport();
  return useCallback(
    async (source, gaugeId) => {
      const link = await report(
        core.client.call("link.open", { source, ...(gaugeId === undefined ? {} : { gaugeId }) }),
      );
      if (link === undefined) return;
      core.link.setState({ link });
      if (source.kind === "serial") portMemory.keep(source.path, source.setting);
    },
    [core, report],
  );
}
