import { mkdtemp, rm, writeFile } from "node:fs/promises";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { linePatternSchema } from "../../../app/gauge/linePattern.ts";
import { formats, shownReadings, streamOf } from "../../app/gauge/formats.ts";
import { holdfast } from "./learnHoldfast.ts";

const format = (name: string) => formats.find((f) => f.name === name)!;
const stream = (name: string, count = 120) =>
  Buffer.from(streamOf(format(name), shownReadings(format(name), count)), "latin1");

describe("holdfast learn", () => {
  it("answers pattern, confidence, decoded lines and open questions as one JSON document", async () => {
    const { code, out, err } = await holdfast(["learn", "-", "--json"], stream("bare number"));
    expect([code, err]).toEqual([0, ""]);
    const answer = JSON.parse(out);
    expect(linePatternSchema.parse(answer.pattern)).toEqual(answer.pattern);
    expect(answer.confidence).toBeGreaterThan(0.9);
    expect(answer.decoded.length).toBe(120);
    expect(answer.decoded[3]).toMatchObject({
      raw: expect.any(String),
      value: expect.any(Number),
      unit: null,
      rejected: null,
    });
    expect(answer.undecided.map((open: { field: string }) => open.field)).toEqual(["unit", "rate"]);
    for (const open of answer.undecided) expect(open.question).toMatch(/\?$/);
  });

  it("asks nothing more when unit and rate are given", async () => {
    const { out } = await holdfast(["learn", "--unit", "kN", "--rate", "50", "--json"], stream("bare number"));
    const answer = JSON.parse(out);
    expect(answer.undecided).toEqual([]);
    expect(answer.pattern).toMatchObject({ unit: "kN", rateHz: 50 });
    expect(answer.decoded[3]).toMatchObject({ unit: "kN", forceN: expect.any(Number) });
  });

  it("keeps the reason of a rejected line beside its raw text", async () => {
    const text = `${stream("number and unit, padded").toString("latin1")}   12.3\r\n`;
    const answer = JSON.parse((await holdfast(["learn", "--json"], text)).out);
    expect(answer.decoded.at(-1)).toMatchObject({ raw: "   12.3", value: null, rejected: expect.any(String) });
    expect([answer.samples, answer.linesRejected]).toEqual([120, 1]);
  });

  it("prints pattern, lines and questions for people, from a file", async () => {
    const folder = await mkdtemp(join(tmpdir(), "learn-"));
    try {
      const file = join(folder, "sample.txt");
      await writeFile(file, stream("number and unit, padded"));
      const { code, out } = await holdfast(["learn", file]);
      expect(code).toBe(0);
      expect(out).toContain('"terminator": "CRLF"');
      expect(out).toContain("120 readings, 0 lines rejected");
      expect(out).toMatch(/Open \(rate\): .*\?/);
    } finally {
      await rm(folder, { recursive: true });
    }
  });

  it.each([
    ["torque", ["learn"], "12.3 Nm\r\n".repeat(20)],
    ["torque", ["learn", "--json"], "12.3 ft-lb\r\n".repeat(20)],
    ["line end", ["learn"], "12.3 kN ".repeat(400)],
    ["empty", ["learn"], ""],
    ["cannot be read", ["learn", "no-such-file.txt"], ""],
    ["--rate", ["learn", "--rate", "fast"], "1 kN\r\n"],
    ["torque", ["learn", "--unit", "Nm"], "1\r\n"],
    ["one FILE", ["learn", "a", "b"], ""],
  ] as const)("says %j in one line and exits with 2", async (why, args, stdin) => {
    const { code, out, err } = await holdfast(args, stdin);
    expect([code, out]).toEqual([2, ""]);
    expect(err).toContain(why);
    expect(err.trimEnd().split("\n").length).toBe(1);
  });
});
