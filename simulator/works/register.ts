import type { Adapter, Gauge, Spindle, StoredPattern } from "../../app/ledger/register.ts";
import type { DemoRecord } from "./DemoWorks.ts";
import { RATE_HZ } from "./seriesLines.ts";
import { type GaugeName, type Story, stories, type TaperName } from "./stories.ts";

/** What the demo works own, with their ids. */
export type DemoRegister = {
  readonly records: readonly DemoRecord[];
  readonly spindles: readonly { readonly story: Story; readonly spindleId: string }[];
  readonly gaugeOf: (name: GaugeName) => Gauge;
  readonly adapterOf: (taper: TaperName) => Adapter;
  readonly operatorIds: readonly string[];
};

/** How the demo gauges write: `    17.92 kN`. */
const pattern: StoredPattern["pattern"] = {
  version: 1,
  name: "Demo gauge",
  rateHz: RATE_HZ,
  fields: [
    { field: "force", decimalMark: ".", decimals: [2], width: 9, instead: { OL: "overload" } },
    { field: "text", text: " " },
    { field: "unit" },
  ],
  terminator: "CRLF",
};

const gauges: readonly { name: GaugeName; capacityN: number }[] = [
  { name: "Gauge 1", capacityN: 30_000 },
  { name: "Gauge 2", capacityN: 50_000 },
  { name: "Gauge 3", capacityN: 100_000 },
];

/** Force at the taper over force at the gauge, as an invented laboratory found it; without one, taken as 1. */
const adapters: readonly { taper: TaperName; scale: number; uncertainty: number; assumed?: boolean }[] = [
  { taper: "HSK-A 40", scale: 1.002, uncertainty: 0.003 },
  { taper: "HSK-A 50", scale: 0.997, uncertainty: 0.003 },
  { taper: "HSK-A 63", scale: 1.004, uncertainty: 0.0025 },
  { taper: "HSK-A 100", scale: 1.001, uncertainty: 0.003 },
  { taper: "SK 40", scale: 0.998, uncertainty: 0.003 },
  { taper: "SK 50", scale: 1, uncertainty: 0.01, assumed: true },
  { taper: "PSC 50", scale: 1.003, uncertainty: 0.003 },
  { taper: "PSC 63", scale: 0.999, uncertainty: 0.003 },
];

/** @param dayAgo  a plain date so many days before the end of the history */
export function demoRegister(newId: () => string, dayAgo: (days: number) => string): DemoRegister {
  const patternId = newId();
  const gaugeBodies = gauges.map(({ name, capacityN }, i) => gaugeBody(name, capacityN, i, patternId, newId(), dayAgo));
  const adapterBodies = adapters.map((a, i) => adapterBody(a, i, newId(), dayAgo));
  const operators = [1, 2, 3].map((n) => ({
    operatorId: newId(),
    name: `Operator ${n}`,
    role: n === 3 ? ("planner" as const) : ("technician" as const),
  }));
  const spindles = stories.map((story) => ({ story, spindleId: newId() }));
  const records: DemoRecord[] = [
    {
      kind: "works",
      body: {
        worksId: newId(),
        name: "Demo works",
        timeZone: "Europe/Berlin",
        rule: { rule: "iso14253" },
        cautionDrop: 0.1,
        actDrop: 0.2,
        unitShown: "kN",
        intervalDays: 91,
      },
    },
    ...operators.map((body) => ({ kind: "operator" as const, body })),
    { kind: "linePattern", body: { patternId, name: "Demo gauge", pattern } },
    ...gaugeBodies.map((body) => ({ kind: "gauge" as const, body })),
    ...adapterBodies.map((body) => ({ kind: "adapter" as const, body })),
    ...spindles.map(({ story, spindleId }, order) => ({
      kind: "spindle" as const,
      body: spindleBody(story, spindleId, order),
    })),
  ];
  return {
    records,
    spindles,
    gaugeOf: (name) => gaugeBodies.find((g) => g.name === name)!,
    adapterOf: (taper) => adapterBodies.find((a) => a.taper === taper)!,
    operatorIds: operators.map((o) => o.operatorId),
  };
}

function gaugeBody(
  name: string,
  capacityN: number,
  i: number,
  patternId: string,
  gaugeId: string,
  dayAgo: (days: number) => string,
): Gauge {
  return {
    gaugeId,
    name,
    serial: `DEMO-G${i + 1}`,
    capacityN,
    resolutionN: 10,
    patternId,
    curve: {
      version: 1,
      coefficients: [0, 1],
      fromN: 0.1 * capacityN,
      toN: capacityN,
      uncertainty: [
        { atN: 0.1 * capacityN, relative: 0.003 },
        { atN: capacityN, relative: 0.0015 },
      ],
    },
    // Before the history begins; the proofs that follow are in `proofs.ts`.
    provedOn: dayAgo([1_270, 1_140, 1_310][i]!),
    dueOn: dayAgo([905, 775, 945][i]!),
    state: "inUse",
  };
}

function adapterBody(
  a: (typeof adapters)[number],
  i: number,
  adapterId: string,
  dayAgo: (days: number) => string,
): Adapter {
  return {
    adapterId,
    name: `Adapter ${a.taper}`,
    taper: a.taper,
    serial: `DEMO-A${i + 1}`,
    scale: a.scale,
    scaleUncertainty: a.uncertainty,
    assumed: a.assumed ?? false,
    version: 1,
    ...(a.assumed ? {} : { calibratedOn: dayAgo(200 + 7 * i), dueOn: dayAgo(-165 + 7 * i) }),
    state: "inUse",
  };
}

function spindleBody(story: Story, spindleId: string, order: number): Spindle {
  const { nominalN, minimumShare = 0.8, machine, area, taper } = story;
  return {
    spindleId,
    name: machine,
    machine,
    area,
    taper,
    unitSerial: `DEMO-U${String(order + 1).padStart(2, "0")}`,
    limits: {
      minimumN: minimumShare * nominalN,
      warningN: (minimumShare + 0.05) * nominalN,
      nominalN,
      maximumN: 1.15 * nominalN,
    },
    limitsFrom: "Invented for the demo; for a real spindle the builder's figures count.",
    springPack: "120 disc springs",
    wedgeRatio: taper.startsWith("HSK") ? 3 : undefined,
    order,
    ...(story.note === undefined ? {} : { note: story.note }),
    state: "inUse",
  };
}
