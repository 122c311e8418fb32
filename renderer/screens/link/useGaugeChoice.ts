import { useState } from "react";
import { useStore } from "zustand";
import type { GaugeRow } from "../../../app/contract/recordViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";

const KEY = "holdfast.lastGauge";

type GaugeChoice = {
  readonly gauges: readonly GaugeRow["gauge"][];
  /** Undefined: one that is not in the register. */
  readonly gaugeId: string | undefined;
  readonly choose: (gaugeId: string | undefined) => void;
};

/** Which gauge is about to be connected: the one tagged, else the one used last on this PC, else the only one there is. */
export function useGaugeChoice(): GaugeChoice {
  const core = useCore();
  const tagged = useStore(core.draft, (state) => state.draft?.tag.gaugeId);
  const rows = useList("gauges").rows ?? [];
  const gauges = rows.map(({ gauge }) => gauge).filter(({ state }) => state === "inUse");
  const [chosen, setChosen] = useState<string | null>();
  const known = (id: string | null | undefined) =>
    gauges.some(({ gaugeId }) => gaugeId === id) ? (id ?? undefined) : undefined;
  const usual =
    known(tagged) ?? known(localStorage.getItem(KEY)) ?? (gauges.length === 1 ? gauges[0]?.gaugeId : undefined);
  return {
    gauges,
    gaugeId: chosen === undefined ? usual : (chosen ?? undefined),
    choose: (gaugeId) => {
      setChosen(gaugeId ?? null);
      if (gaugeId !== undefined) localStorage.setItem(KEY, gaugeId);
    },
  };
}
