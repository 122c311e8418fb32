import { useCallback } from "react";
import { useList } from "../../state/useList.ts";

type NameOf = (id: string | null | undefined) => string | undefined;

/** Names of gauges, adapters and operators by their ids. */
export function useToolNames(): { readonly gauge: NameOf; readonly adapter: NameOf; readonly operator: NameOf } {
  const gauges = useList("gauges").rows;
  const adapters = useList("adapters").rows;
  const operators = useList("operators").rows;
  return {
    gauge: useCallback((id) => gauges?.find((row) => row.gauge.gaugeId === id)?.gauge.name, [gauges]),
    adapter: useCallback((id) => adapters?.find((row) => row.adapter.adapterId === id)?.adapter.name, [adapters]),
    operator: useCallback((id) => operators?.find((row) => row.operatorId === id)?.name, [operators]),
  };
}
