import type { ServiceEvent } from "../../app/ledger/register.ts";
import type { ClampingUnit } from "../physics/clampingUnit.ts";

/** How long the demo works' history is. */
export const HISTORY_DAYS = 1_096;

/** What a mechanism is like on a day, `ageDays` before the end of the history. */
export type Wear = Pick<ClampingUnit, "tired" | "brokenDiscs" | "dryness"> & {
  /** A chip or a scratch on the taper on this one visit: the share of the force that is missing. */
  readonly chip?: number | undefined;
};

export type Story = {
  readonly machine: string;
  readonly area: string;
  readonly taper: TaperName;
  readonly gauge: GaugeName;
  readonly nominalN: number;
  /** The least force, as a share of the nominal one; default 0.8. */
  readonly minimumShare?: number;
  /** Tool changes a day. */
  readonly changesADay: number;
  readonly wear: (ageDays: number) => Wear;
  /** Work on it, by how long ago; the visit before and after it is part of the story. */
  readonly services?: readonly {
    readonly ageDays: number;
    readonly kind: ServiceEvent["kind"];
    readonly parts?: string;
    readonly newBaseline: boolean;
  }[];
  readonly neverMeasured?: boolean;
  readonly note?: string;
};

export type TaperName = "HSK-A 40" | "HSK-A 50" | "HSK-A 63" | "HSK-A 100" | "SK 40" | "SK 50" | "PSC 50" | "PSC 63";
export type GaugeName = "Gauge 1" | "Gauge 2" | "Gauge 3";

const sound: Wear = { tired: 0, brokenDiscs: 0, dryness: 0.05 };
const level = () => sound;
/** How much of the history has passed, 0 to 1. */
const passed = (ageDays: number) => 1 - ageDays / HISTORY_DAYS;

/**
 * Every spindle of the demo works and what happens to it; all of it invented. Tapers by the names of ISO 12164 (hollow),
 * ISO 7388 (steep) and ISO 26623 (polygonal); forces are what one meets on such tapers (common practice, no source).
 */
export const stories: readonly Story[] = [
  {
    machine: "Mill 1",
    area: "Hall A",
    taper: "HSK-A 63",
    gauge: "Gauge 1",
    nominalN: 18_000,
    changesADay: 420,
    wear: level,
  },
  {
    machine: "Mill 2",
    area: "Hall A",
    taper: "HSK-A 63",
    gauge: "Gauge 1",
    nominalN: 18_000,
    changesADay: 900,
    wear: (ageDays) => ({ ...sound, tired: 0.135 * passed(ageDays) ** 1.3 }), // the springs tire
    note: "Three shifts; the busiest machine of the hall.",
  },
  {
    machine: "Mill 3",
    area: "Hall A",
    taper: "HSK-A 63",
    gauge: "Gauge 1",
    nominalN: 18_000,
    changesADay: 380,
    wear: (ageDays) => ({ ...sound, brokenDiscs: ageDays > 400 ? 0 : 5 }), // springs break, all at once
  },
  {
    machine: "Mill 4",
    area: "Hall A",
    taper: "HSK-A 100",
    gauge: "Gauge 3",
    nominalN: 45_000,
    changesADay: 150,
    wear: level,
  },
  {
    machine: "Mill 5",
    area: "Hall B",
    taper: "SK 40",
    gauge: "Gauge 1",
    nominalN: 12_000,
    changesADay: 500,
    // The gripper runs dry, is greased, and is well again.
    wear: (ageDays) => ({
      ...sound,
      dryness: ageDays > 110 ? 0.05 + 0.6 * Math.max(0, 1 - (ageDays - 110) / 300) : 0.03,
    }),
    services: [{ ageDays: 110, kind: "lubricated", newBaseline: false }],
  },
  {
    machine: "Mill 6",
    area: "Hall B",
    taper: "SK 40",
    gauge: "Gauge 1",
    nominalN: 12_000,
    changesADay: 350,
    // Tired, then a new spring pack.
    wear: (ageDays) => ({
      ...sound,
      tired: ageDays > 330 ? 0.16 * ((HISTORY_DAYS - ageDays) / (HISTORY_DAYS - 330)) ** 2 : 0,
    }),
    services: [{ ageDays: 330, kind: "springs", parts: "spring pack, 120 discs", newBaseline: true }],
  },
  {
    machine: "Mill 7",
    area: "Hall B",
    taper: "SK 50",
    gauge: "Gauge 3",
    nominalN: 25_000,
    changesADay: 260,
    // Breaks faster and faster: below its minimum at the end.
    wear: (ageDays) => ({
      ...sound,
      tired: 0.06 * passed(ageDays),
      brokenDiscs: ageDays > 260 ? 0 : ageDays > 120 ? 4 : 10,
    }),
  },
  {
    machine: "Lathe 1",
    area: "Hall C",
    taper: "PSC 50",
    gauge: "Gauge 2",
    nominalN: 30_000,
    changesADay: 120,
    wear: level,
  },
  {
    machine: "Lathe 2",
    area: "Hall C",
    taper: "PSC 50",
    gauge: "Gauge 2",
    nominalN: 30_000,
    changesADay: 140,
    wear: level,
  },
  {
    machine: "Mill 8",
    area: "Hall C",
    taper: "HSK-A 50",
    gauge: "Gauge 2",
    nominalN: 11_000,
    changesADay: 600,
    wear: level,
  },
  {
    machine: "Mill 9",
    area: "Hall C",
    taper: "HSK-A 63",
    gauge: "Gauge 2",
    nominalN: 18_000,
    changesADay: 450,
    // Sound enough by itself; with the gauge gone off it looks a tenth down.
    wear: (ageDays) => ({ ...sound, tired: 0.065 * passed(ageDays) }),
  },
  {
    machine: "Lathe 3",
    area: "Hall C",
    taper: "PSC 63",
    gauge: "Gauge 2",
    nominalN: 40_000,
    changesADay: 90,
    wear: level,
  },
  {
    machine: "Mill 14",
    area: "Hall C",
    taper: "HSK-A 63",
    gauge: "Gauge 2",
    nominalN: 18_000,
    changesADay: 240,
    wear: level,
  },
  {
    machine: "Mill 15",
    area: "Hall C",
    taper: "HSK-A 50",
    gauge: "Gauge 2",
    nominalN: 11_000,
    changesADay: 310,
    wear: level,
  },
  {
    machine: "Mill 10",
    area: "Hall D",
    taper: "HSK-A 63",
    gauge: "Gauge 1",
    nominalN: 18_000,
    changesADay: 700,
    wear: (ageDays) => ({ ...sound, tired: 0.177 * passed(ageDays) ** 1.5 }), // ends so near its minimum that nobody can tell
    minimumShare: 0.85,
  },
  {
    machine: "Mill 11",
    area: "Hall D",
    taper: "HSK-A 40",
    gauge: "Gauge 1",
    nominalN: 6_800,
    changesADay: 800,
    wear: level,
  },
  {
    machine: "Mill 12",
    area: "Hall D",
    taper: "HSK-A 63",
    gauge: "Gauge 1",
    nominalN: 18_000,
    changesADay: 300,
    wear: (ageDays) => ({ ...sound, chip: ageDays > 530 && ageDays < 616 ? 0.085 : undefined }), // one visit off, the next one back
  },
  {
    machine: "Mill 13",
    area: "Hall D",
    taper: "HSK-A 63",
    gauge: "Gauge 1",
    nominalN: 18_000,
    changesADay: 0,
    wear: level,
    neverMeasured: true,
    note: "New machine, not yet handed over.",
  },
];

/** Gauge 2 reads low by this share since somebody dropped it. */
export function gainOf(gauge: GaugeName, ageDays: number): number {
  return gauge === "Gauge 2" && ageDays < 165 ? 0.952 : 1;
}
