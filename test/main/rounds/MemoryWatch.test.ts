import { describe, expect, it } from "vitest";
import { learnDump } from "../../../app/round/dump/learnDump.ts";
import { readDump } from "../../../app/round/dump/readDump.ts";
import { MemoryWatch } from "../../../main/rounds/MemoryWatch.ts";
import { memoryDumps } from "../../support/memoryDumps.ts";

const CLOCK = Date.parse("2026-03-20T14:00:00Z");
const forms = Object.keys(memoryDumps) as (keyof typeof memoryDumps)[];
const linesOf = (form: keyof typeof memoryDumps, count: number) =>
  memoryDumps[form](
    Array.from({ length: count }, (_, i) => ({
      number: i + 1,
      forceN: 12_000 + 370 * (i % 50),
      unit: "kN" as const,
      clockMs: CLOCK - (count - i) * 300_000,
      location: 1 + (i % 20),
      held: true,
    })),
    CLOCK,
  );
/** Comes in pieces of so many characters, looked at after each so many pieces. */
function watched(text: string, piece: number, every: number) {
  const watch = new MemoryWatch();
  let looks = 0;
  for (let at = 0; at < text.length; at += piece) {
    watch.push(text.slice(at, at + piece));
    looks += 1;
    if (looks % every === 0) watch.look();
  }
  return watch;
}

describe("a memory that is watched while it comes", () => {
  it.each(forms)("in the form %s is counted as the whole text is, however it is cut", (form) => {
    const text = linesOf(form, 400).join("");
    const whole = readDump(text, learnDump(text).format!);
    for (const [piece, every] of [
      [97, 5],
      [1_013, 1],
      [text.length, 1],
    ] as const) {
      const watch = watched(text, piece, every);
      expect(watch.text).toBe(text);
      expect(watch.look(true)).toMatchObject({ records: whole.records.length, incomplete: false });
    }
  });

  it.each(["list", "table", "checked"] as const)("in the form %s is whole with its last record, not before", (form) => {
    const lines = linesOf(form, 300);
    const watch = watched(lines.slice(0, -12).join(""), 500, 2);
    expect(watch.look().whole).toBe(false);
    watch.push(lines.slice(-12).join(""));
    expect(watch.look().whole).toBe(true);
  });

  it("with lines lost is not whole, and says so", () => {
    const lines = linesOf("list", 300).filter((_, i) => i !== 120);
    expect(watched(lines.join(""), 700, 1).look(true)).toEqual({ records: 299, whole: false, incomplete: true });
  });

  it("with a damaged line is not whole", () => {
    const text = linesOf("checked", 200).join("").replace(",1200,", ",1900,");
    expect(watched(text, 700, 1).look(true)).toMatchObject({ whole: false, incomplete: true });
  });

  it("is found behind live lines, between them and before them", () => {
    const live = Array.from({ length: 2_000 }, (_, i) => `${(i % 10) / 100} kN\r\n`);
    const mixed = linesOf("list", 100).flatMap((line, i) => [line, live[i]!]);
    const watch = watched([...live, ...mixed, ...live].join(""), 600, 1);
    expect(watch.look(true)).toEqual({ records: 100, whole: true, incomplete: false });
  });

  it("of ten thousand readings holds the core up for a moment at each look", () => {
    const text = linesOf("list", 10_000).join("");
    let held = Number.POSITIVE_INFINITY;
    for (let time = 0; time < 3; time += 1) {
      const watch = new MemoryWatch();
      let longest = 0;
      for (let at = 0; at < text.length; at += 11_000) {
        watch.push(text.slice(at, at + 11_000)); // a second at 115,200 baud
        const from = process.threadCpuUsage();
        watch.look();
        const { user, system } = process.threadCpuUsage(from);
        longest = Math.max(longest, (user + system) / 1_000);
      }
      expect(watch.look(true)).toEqual({ records: 10_000, whole: true, incomplete: false });
      held = Math.min(held, longest);
    }
    expect(held).toBeLessThan(50);
  });
});
