import { describe, expect, it } from "vitest";
import { usualGauge } from "../../../simulator/gauge/GaugeOptions.ts";
import { SimulatedGauge } from "../../../simulator/gauge/SimulatedGauge.ts";
import { dumpFormats } from "../../../simulator/memory/dumpFormats.ts";
import { GaugeClock } from "../../../simulator/memory/GaugeClock.ts";
import { GaugeMemory, type StoredReading } from "../../../simulator/memory/GaugeMemory.ts";
import { MemoryGauge, type MemoryOptions } from "../../../simulator/memory/MemoryGauge.ts";
import { runMemoryCommand } from "../../../simulator/memory/memoryCommands.ts";
import { type RoundOptions, simulateRound, usualSlips } from "../../../simulator/memory/simulateRound.ts";

const noon = Date.UTC(2026, 0, 31, 12);
const day = 86_400_000;

describe("GaugeClock", () => {
  it("is off by its offset and gains its drift, in whole seconds", () => {
    const clock = new GaugeClock(-3_600, 8.64, noon); // 8.64 s a day: 0.1 ms a second
    expect(clock.shows(noon) - noon).toBe(-3_600_000);
    expect(clock.shows(noon + 10 * day) - (noon + 10 * day)).toBeCloseTo(-3_600_000 + 86_400, -3.1);
    expect(clock.shows(noon + 1_234) % 1_000).toBe(0);
  });

  it("begins anew when its battery is changed: it jumps back", () => {
    const clock = new GaugeClock(0, 0, noon);
    clock.reset(noon + day);
    expect(clock.shows(noon + day)).toBe(Date.UTC(2020, 0, 1));
    expect(clock.shows(noon + day + 5_000)).toBe(Date.UTC(2020, 0, 1) + 5_000);
  });
});

describe("GaugeMemory", () => {
  const reading = { forceN: 17_920, unit: "kN", clockMs: noon, location: 3, held: false } as const;

  it("numbers from 1, takes no more when it is full, and renumbers what is left", () => {
    const memory = new GaugeMemory(3);
    expect([1, 2, 3, 4].map(() => memory.store(reading))).toEqual([true, true, true, false]);
    expect(memory.full).toBe(true);
    memory.removeFirst(1);
    expect(memory.readings.map((r) => r.number)).toEqual([1, 2]);
    expect(memory.store(reading)).toBe(true);
    memory.clear();
    expect(memory.readings).toEqual([]);
  });

  it.each([0, -1, 1.5])("refuses a capacity of %d", (capacity) => {
    expect(() => new GaugeMemory(capacity)).toThrow(RangeError);
  });
});

describe("a dump", () => {
  const readings: StoredReading[] = [
    { number: 1, forceN: 17_920, unit: "kN", clockMs: Date.UTC(2026, 1, 3, 8, 14, 5), location: 3, held: false },
    { number: 2, forceN: 18_010, unit: "kN", clockMs: Date.UTC(2026, 1, 3, 12, 0, 0), location: undefined, held: true },
  ];

  it("as a list has its count first and last", () => {
    expect(dumpFormats.list(readings, 2)).toEqual([
      "COUNT 2\r\n",
      "0001;17.92;kN;2026-02-03;08:14:05;L03;ACT\r\n",
      "0002;18.01;kN;2026-02-03;12:00:00;;MAX\r\n",
      "END 2\r\n",
    ]);
  });

  it("in columns has decimal commas, the day first, and a checksum that holds", () => {
    const lines = dumpFormats.columns(readings, 2);
    expect(lines[1]).toMatch(/^ {2}1 {5}17,92 03\.02\.26 08:14 03\*[0-9A-F]{2}\r\n$/);
    const [body, sum] = lines[1]!.trimEnd().split("*");
    expect([...body!].reduce((x, c) => x ^ c.charCodeAt(0), 0)).toBe(Number.parseInt(sum!, 16));
  });

  it("in blocks has the month first and twelve hours", () => {
    const text = dumpFormats.blocks(readings, 2).join("");
    expect(text).toBe(
      "No. 1\nValue 17.92 kN\n02/03/2026 08:14:05 AM\nLocation 3\n\nNo. 2\nPeak 18.01 kN\n02/03/2026 12:00:00 PM\n\n",
    );
  });

  it("of an empty memory says so or says nothing", () => {
    expect(dumpFormats.list([], 2)).toEqual(["COUNT 0\r\n", "END 0\r\n"]);
    expect(dumpFormats.blocks([], 2)).toEqual([]);
  });
});

describe("MemoryGauge", () => {
  const options: MemoryOptions = { capacity: 50, format: "list", startMs: noon, clockOffsetS: 120, driftSPerDay: 0 };
  const made = () => {
    const gauge = new SimulatedGauge(usualGauge);
    return { gauge, memory: new MemoryGauge(gauge, options) };
  };

  it("stores what the gauge shows, or the greatest, with its own time and location", () => {
    const { gauge, memory } = made();
    gauge.advance(100);
    gauge.clamp(17_000);
    gauge.advance(300);
    runMemoryCommand(memory, "location 7");
    expect(runMemoryCommand(memory, "store")).toBe("stored as number 1");
    runMemoryCommand(memory, "store max");
    const [shown, greatest] = memory.memory.readings;
    expect(Math.abs(shown!.forceN - 17_000)).toBeLessThan(40);
    expect(greatest!.forceN).toBeGreaterThan(17_200);
    expect(shown).toMatchObject({ location: 7, held: false, clockMs: noon + 4_000 + 120_000 });
    expect(greatest!.held).toBe(true);
  });

  it("answers for its memory, its count and its clock", () => {
    const { gauge, memory } = made();
    gauge.advance(100);
    memory.store(false);
    expect(String(memory.answer("COUNT"))).toBe("COUNT 1\r\n");
    expect(String(memory.answer("TIME"))).toBe("CLOCK 2026-01-31 12:02:01\r\n");
    expect(String(memory.answer("DUMP"))).toMatch(/^COUNT 1\r\n0001;.*\r\nEND 1\r\n$/);
    expect(memory.answer("PRINT")).toBeUndefined();
  });

  it("loses lines of a dump as told, and another dump is whole again", () => {
    const { gauge, memory } = made();
    gauge.advance(10);
    for (let i = 0; i < 50; i += 1) memory.store(false);
    expect(runMemoryCommand(memory, "store")).toContain("full");
    runMemoryCommand(memory, "loseLines 0.2");
    const lines = String(memory.dump()).split("\r\n").length - 1;
    expect(lines).toBeGreaterThan(30);
    expect(lines).toBeLessThan(52);
    runMemoryCommand(memory, "loseLines 0");
    expect(String(memory.dump()).split("\r\n").length - 1).toBe(52);
  });

  it.each(["location -1", "loseLines", "loseLines 2", "removeFirst x"])("refuses %j", (line) => {
    expect(() => runMemoryCommand(made().memory, line)).toThrow(RangeError);
  });

  it("leaves other commands to the gauge", () => {
    expect(runMemoryCommand(made().memory, "clamp")).toBeUndefined();
  });
});

describe("simulateRound", () => {
  const places = Array.from({ length: 40 }, (_, i) => ({
    spindleId: `s${i}`,
    forceN: 10_000 + 500 * i,
    location: i + 1,
  }));
  const options: RoundOptions = {
    seed: 1,
    places,
    startMs: noon,
    unit: "kN",
    slips: usualSlips,
    visitScatter: 0.01,
    takeScatter: 0.003,
    clockOffsetS: 86_400 * 200,
    driftSPerDay: 4,
    memory: 1_000,
  };

  it("is the same day for the same seed", () => {
    expect(JSON.stringify(simulateRound(options))).toBe(JSON.stringify(simulateRound(options)));
    expect(JSON.stringify(simulateRound({ ...options, seed: 2 }))).not.toBe(JSON.stringify(simulateRound(options)));
  });

  it("tells of each reading whose it is, when it was, and what the clock showed", () => {
    const { readings, owners, trueMs, clock } = simulateRound(options);
    expect(owners).toHaveLength(readings.length);
    for (const [i, reading] of readings.entries()) {
      const place = places.find((p) => p.spindleId === owners[i])!;
      expect(reading.location).toBe(place.location);
      expect(Math.abs(reading.forceN / place.forceN - 1)).toBeLessThan(0.06);
      expect(reading.clockMs).toBe(clock.shows(trueMs[i]!));
    }
    expect(trueMs).toEqual([...trueMs].sort((a, b) => a - b));
  });

  it("goes otherwise than planned as often as told, within five standard errors", () => {
    let missing = 0;
    let visits = 0;
    let swapped = 0;
    const rounds = 400;
    for (let seed = 0; seed < rounds; seed += 1) {
      const { visited, owners } = simulateRound({ ...options, seed, slips: { ...usualSlips, repeated: 0 } });
      missing += places.length - visited.length;
      visits += visited.length;
      const order = visited.map((id) => Number(id.slice(1)));
      swapped += order.filter((n, i) => i > 0 && n < order[i - 1]!).length;
      expect(new Set(owners).size).toBe(visited.length);
    }
    const all = rounds * places.length;
    expect(Math.abs(missing / all - 0.05)).toBeLessThan(5 * Math.sqrt((0.05 * 0.95) / all));
    expect(Math.abs(swapped / visits - 0.02)).toBeLessThan(0.006); // an exchanged pair cannot be exchanged again
  });

  it("brings the slips it is told to", () => {
    const all = simulateRound({
      ...options,
      slips: { ...usualSlips, repeated: 1, twice: 1, zeroTake: 1, notCleared: 1, clockReset: 1 },
    });
    expect(all.owners).toContain(undefined);
    const same = all.readings.filter((r, i) => i > 0 && r.forceN === all.readings[i - 1]!.forceN);
    expect(same.length).toBeGreaterThan(10);
    expect(all.readings.some((r, i) => i > 0 && r.clockMs < all.readings[i - 1]!.clockMs)).toBe(true);
  });

  it("stops storing when the memory is full", () => {
    expect(simulateRound({ ...options, memory: 20 }).readings).toHaveLength(20);
  });
});
