import type { AdapterRow, GaugeRow, SpindleRow } from "../../../app/contract/recordViews.ts";

export type Labelled = { readonly part: "spindle" | "adapter" | "gauge"; readonly id: string; readonly name: string };

/**
 * What a label means: the id in it (as our own labels carry it, alone or in a longer text), else the exact name, whatever the
 * case, else a serial number. Undefined where nothing or more than one thing fits: a wrong machine is worse than none.
 */
export function matchLabel(
  label: string,
  spindles: readonly SpindleRow[],
  adapters: readonly AdapterRow[],
  gauges: readonly GaugeRow[] = [],
): Labelled | undefined {
  const sought = label.trim().toLocaleLowerCase();
  const id = /[0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12}/.exec(sought)?.[0];
  const known = [
    ...spindles.map(({ spindle: s }) => ({
      part: "spindle" as const,
      id: s.spindleId,
      name: s.name,
      serial: s.unitSerial,
      state: s.state,
    })),
    ...adapters.map(({ adapter: a }) => ({
      part: "adapter" as const,
      id: a.adapterId,
      name: a.name,
      serial: a.serial,
      state: a.state,
    })),
    ...gauges.map(({ gauge: g }) => ({
      part: "gauge" as const,
      id: g.gaugeId,
      name: g.name,
      serial: g.serial,
      state: g.state,
    })),
  ].filter((one) => one.state === "inUse");
  const same = (text: string | undefined) => text?.toLocaleLowerCase() === sought;
  const tests = [
    (one: (typeof known)[number]) => id !== undefined && one.id === id,
    (one: (typeof known)[number]) => same(one.name),
    (one: (typeof known)[number]) => same(one.serial),
  ];
  for (const test of tests) {
    const found = known.filter(test);
    if (found.length === 1) return found[0];
    if (found.length > 1) return undefined;
  }
  return undefined;
}
