import type { Draft } from "../../../app/contract/seriesViews.ts";
import type { Spindle } from "../../../app/ledger/register.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { useProgram } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { forceUnitOf } from "../../words/Speech.ts";

const noSpindles: readonly never[] = Object.freeze([]);

/** The spindle of the series, and the unit its forces are shown in: its own, else the works'. */
export function useTaggedSpindle(draft: Draft | undefined): {
  readonly spindle: Spindle | undefined;
  readonly unit: ForceUnit;
} {
  const worksUnit = useProgram((state) => state.works?.unitShown);
  const rows = useList("spindles").rows ?? noSpindles;
  const spindle = rows.find((row) => row.spindle.spindleId === draft?.tag.spindleId)?.spindle;
  return { spindle, unit: forceUnitOf(spindle?.unitShown ?? worksUnit ?? "kN") };
}
