import type { Core } from "../../state/Core.ts";
import { type Labelled, matchLabel } from "./matchLabel.ts";

/** What a label means by what the register says now; asked at the scan, since few screens hold all three lists. */
export async function findLabel(core: Core, label: string): Promise<Labelled | undefined> {
  const { client } = core;
  const [spindles, adapters, gauges] = await Promise.all([
    client.call("spindles.list", {}),
    client.call("adapters.list", {}),
    client.call("gauges.list", {}),
  ]);
  return spindles.ok && adapters.ok && gauges.ok
    ? matchLabel(label, spindles.value, adapters.value, gauges.value)
    : undefined;
}
