import type { AdapterRow, GaugeRow, OperatorView } from "../../../app/contract/recordViews.ts";
import type { ServiceEvent, Spindle, Works } from "../../../app/ledger/register.ts";
import type { Limits } from "../../../app/verdict/Judgement.ts";
import { idsFrom } from "./fakeId.ts";

/** An invented works, small: enough for every screen to have something to say. */
const id = idsFrom(0);

export const fakeWorks: Works = {
  worksId: id(),
  name: "Invented Works",
  timeZone: "Europe/Berlin",
  rule: { rule: "guarded" },
  cautionDrop: 0.1,
  actDrop: 0.2,
  unitShown: "kN",
  intervalDays: 90,
};

const limitsOf = (nominalN: number): Limits => ({
  minimumN: nominalN * 0.8,
  warningN: nominalN * 0.85,
  nominalN,
  maximumN: nominalN * 1.15,
});

/** Name, machine, area, taper, nominal force, and how its history goes. */
export type History = "level" | "tiring" | "broken" | "dry" | "serviced" | "low" | "straddling" | "none";
export const fakePlan: readonly (readonly [string, string, string, string, number, History])[] = [
  ["Mill 1", "machining centre", "hall B", "HSK-A63", 18_000, "level"],
  ["Mill 2", "machining centre", "hall B", "HSK-A63", 18_000, "broken"],
  ["Mill 3", "machining centre", "hall B", "HSK-A63", 18_000, "serviced"],
  ["Mill 4", "machining centre", "hall B", "HSK-A63", 18_000, "level"],
  ["Mill 7", "portal mill", "hall C", "SK 40", 17_000, "low"],
  ["Mill 9", "portal mill", "hall C", "SK 50", 25_000, "level"],
  ["Lathe 4", "turn-mill", "hall A", "HSK-A63", 18_000, "tiring"],
  ["Drill 1", "drilling centre", "hall A", "HSK-E40", 6_000, "dry"],
  ["Grinder 5", "tool grinder", "hall D", "HSK-E40", 6_800, "straddling"],
  ["Mill 12", "machining centre", "hall B", "HSK-A63", 18_000, "none"],
];

export const fakeSpindles: readonly Spindle[] = fakePlan.map(([name, machine, area, taper, nominalN], order) => ({
  spindleId: id(),
  name,
  machine,
  area,
  taper,
  limits: limitsOf(nominalN),
  limitsFrom: "builder's sheet, 2023",
  order,
  state: "inUse",
}));

const adapterRow = (name: string, taper: string, scale: number): AdapterRow => ({
  adapter: {
    adapterId: id(),
    name,
    taper,
    serial: `A-${name}`,
    scale,
    scaleUncertainty: 0.002,
    assumed: false,
    version: 1,
    calibratedOn: "2026-03-01",
    dueOn: "2027-03-01",
    state: "inUse",
  },
  proofState: "current",
  checkCount: 40,
});
export const fakeAdapters: AdapterRow[] = [
  adapterRow("A63-2", "HSK-A63", 1.002),
  adapterRow("E40-1", "HSK-E40", 0.998),
  adapterRow("SK40-1", "SK 40", 1),
  adapterRow("SK50-1", "SK 50", 1.004),
];

const gaugeRow = (name: string, capacityN: number, proofState: GaugeRow["proofState"]): GaugeRow => ({
  gauge: {
    gaugeId: id(),
    name,
    serial: `G-${name.at(-1)}`,
    capacityN,
    resolutionN: 10,
    provedOn: "2026-06-10",
    dueOn: proofState === "pastDue" ? "2026-09-01" : "2027-06-10",
    state: "inUse",
  },
  proofState,
  checkCount: 60,
});
export const fakeGauges: GaugeRow[] = [gaugeRow("Gauge 1", 30_000, "current"), gaugeRow("Gauge 2", 30_000, "pastDue")];

export const fakeOperators: OperatorView[] = [
  fakeOperator(id(), "Operator 1", "technician"),
  fakeOperator(id(), "Operator 2", "planner"),
];

export function fakeOperator(operatorId: string, name: string, role: OperatorView["role"]): OperatorView {
  return { operatorId, name, fullName: name, initials: `O${name.at(-1)}`, hasPin: false, role, state: "inUse" };
}

/** The one service of the invented works: Mill 3 got a new gripper. */
export const fakeEvents: readonly ServiceEvent[] = [
  {
    eventId: id(),
    spindleId: fakeSpindles[2]!.spindleId,
    at: "2026-02-20",
    kind: "gripper",
    parts: "gripper set",
    newBaseline: true,
  },
];
