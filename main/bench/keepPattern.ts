import type { Parsed } from "../../app/contract/methods.ts";
import { readGauge } from "../store/records/gauges.ts";
import type { Store } from "../store/Store.ts";

/** Files a line pattern under a name and, where a gauge is named, as that gauge's own. Answers the pattern's id. */
export function keepPattern(
  store: Store,
  name: string,
  pattern: Parsed<"link.usePattern">["pattern"],
  gaugeId: string | undefined,
): string {
  const patternId = store.newId();
  const gauge = gaugeId === undefined ? undefined : readGauge(store.db, gaugeId);
  store.append([
    { kind: "linePattern", body: { patternId, name, pattern } },
    ...(gauge === undefined ? [] : [{ kind: "gauge" as const, body: { ...gauge, patternId } }]),
  ]);
  return patternId;
}
