import { useCallback } from "react";
import type { PcSettings } from "../../../app/contract/programViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { useReport } from "../shell/useReport.ts";

type TourPlace = NonNullable<PcSettings["tour"]>;

/** How far the tour has come on this PC, and the way to move it. The page moves at once, the program keeps it. */
export function useTourPlace(): readonly [TourPlace | undefined, (place: TourPlace) => Promise<void>] {
  const core = useCore();
  const report = useReport();
  const tour = useProgram((state) => state.settings.tour);
  const move = useCallback(
    async (next: TourPlace) => {
      core.program.setState(({ settings }) => ({ settings: { ...settings, tour: next } }));
      await report(core.client.call("settings.save", { tour: next }));
    },
    [core, report],
  );
  return [tour, move];
}
