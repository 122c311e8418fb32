import { describe, expect, it } from "vitest";
import { type LearnResult, learnPattern } from "../../../app/gauge/learnPattern.ts";
import { bytesOfText, lcg } from "./formats.ts";

type Learned = Extract<LearnResult, { kind: "learned" }>;

function learned(text: string | Uint8Array, hints = {}): Learned {
  const result = learnPattern(typeof text === "string" ? bytesOfText(text) : text, hints);
  if (result.kind !== "learned") throw new Error(`${result.kind}: ${result.reason}`);
  return result;
}

const asked = (result: Learned) => result.undecided.map((open) => open.field).sort();

const repeat = (count: number) => (load: (i: number) => string) =>
  Array.from({ length: count }, (_, i) => load(i)).join("");
const lines = repeat(300);
const noise = lcg(5);
/** A quiet gauge with one clamping, in newtons. */
const loadN = (i: number) => (i > 120 && i < 220 ? 17_600 : 0) + (noise() - 0.5) * 30;
const kN = (i: number, width = 8) => (loadN(i) / 1000).toFixed(2).padStart(width);

describe("learnPattern", { timeout: 60_000 }, () => {
  it("takes a leading number that rises by one for a counter and by another step for a clock", () => {
    const counter = learned(lines((i) => `${i} ${kN(i)} kN\r\n`));
    expect(counter.pattern.fields[0]).toMatchObject({ field: "counter" });
    const clock = learned(lines((i) => `${i * 10} ${kN(i)} kN\r\n`));
    expect(clock.pattern.fields[0]).toMatchObject({ field: "time", unit: "ms" });
    expect(clock.pattern.rateHz).toBe(100);
  });

  it("finds a rate that is no whole number of milliseconds", () => {
    expect(learned(lines((i) => `${Math.round((i * 1000) / 60)};${kN(i)};kN\r\n`)).pattern.rateHz).toBe(60);
  });

  it("finds the rate from a time of day that steps once a second, and stamps no line by it", () => {
    const clock = (i: number) => `12:00:${String(Math.floor(i / 20)).padStart(2, "0")}`;
    const result = learned(lines((i) => `${clock(i)} ${kN(i)} kN\r\n`));
    expect(result.pattern.rateHz).toBe(20);
    expect(result.decoded.some((line) => line.stampS !== undefined)).toBe(false);
  });

  it("asks whether steps of twenty thousand are milliseconds, unless the rate is known", () => {
    const stream = lines((i) => `${i * 20_000};${kN(i)};kN\r\n`);
    expect(asked(learned(stream))).toContain("time");
    const known = learned(stream, { rateHz: 50 });
    expect(asked(known)).toEqual([]);
    expect(known.pattern.fields[0]).toMatchObject({ field: "time", unit: "us" });
  });

  it("follows a change of unit in mid-stream, with its own decimals", () => {
    const result = learned(lines((i) => (i < 150 ? `${kN(i)} kN\r\n` : `${loadN(i).toFixed(0).padStart(8)} N\r\n`)));
    expect(result.rejected).toBe(0);
    expect(new Set(result.decoded.map((line) => line.unit))).toEqual(new Set(["kN", "N"]));
  });

  it("follows a resolution that changes with the range", () => {
    const shown = (i: number) => {
      const force = loadN(i) / 1000;
      return Math.abs(force) < 10 ? force.toFixed(3) : force.toFixed(2);
    };
    expect(learned(lines((i) => `${shown(i)} kN\r\n`)).rejected).toBe(0);
  });

  it("tells held from live lines that are mixed, in one form and in two", () => {
    const states = (text: string) => new Set(learned(text).decoded.map((line) => line.state));
    expect(states(lines((i) => `${i % 2 === 0 ? "LIVE" : "PEAK"} ${kN(i)} kN\r\n`))).toEqual(new Set(["live", "held"]));
    expect(states(lines((i) => `${i % 20 === 0 ? "MAX " : ""}${kN(i)} kN\r\n`))).toEqual(new Set(["live", "held"]));
    expect(states(lines((i) => `${i % 2 === 0 ? "L" : "M"}${kN(i)} kN\r\n`))).toEqual(new Set(["live", "held"]));
  });

  it("asks about letters it does not know, and about a single P on every line", () => {
    expect(asked(learned(lines((i) => `${i % 3 === 0 ? "A" : "B"}${kN(i)} kN\r\n`)))).toEqual(["rate", "status"]);
    expect(asked(learned(lines((i) => `P${kN(i)} kN\r\n`)))).toEqual(["rate", "status"]);
  });

  it("asks which number is the force where two could be", () => {
    const drift = lcg(8);
    expect(asked(learned(lines((i) => `${kN(i)} ${(20 + drift() * 5).toFixed(2)}\r\n`)))).toEqual([
      "force",
      "rate",
      "unit",
    ]);
    expect(asked(learned("0 0\r\n".repeat(50)))).toEqual(["force", "rate", "unit"]);
    expect(asked(learned(repeat(50)((i) => `${i}\r\n`)))).toEqual(["force", "rate", "unit"]);
  });

  it("asks about a check by no rule it knows", () => {
    const any = lcg(6);
    expect(
      asked(
        learned(
          lines(
            (i) =>
              `${kN(i)} kN*${Math.floor(any() * 256)
                .toString(16)
                .toUpperCase()
                .padStart(2, "0")}\r\n`,
          ),
        ),
      ),
    ).toEqual(["checksum", "rate"]);
  });

  it("proposes the rate at which the sample arrived, without taking it for true", () => {
    const result = learned(
      lines((i) => `${kN(i)} kN\r\n`),
      { durationS: 6 },
    );
    expect(result.undecided.find((open) => open.field === "rate")?.proposal).toBe("50");
    expect(result.pattern.rateHz).toBeUndefined();
  });

  it("reads seven bits with any parity that were received as eight", () => {
    const text = lines((i) => `${kN(i)} kN\r\n`);
    const ones = (code: number) => [...code.toString(2)].filter((bit) => bit === "1").length % 2;
    const as = (change: (code: number) => number) => learned(Uint8Array.from(text, (c) => change(c.charCodeAt(0))));
    expect(as((code) => (ones(code) === 0 ? code : code | 0x80)).pattern.parity).toBe("even");
    expect(as((code) => (ones(code) === 1 ? code : code | 0x80)).pattern.parity).toBe("odd");
    expect(as((code) => code | 0x80).pattern.parity).toBe("mark");
    expect(as((code) => (ones(code) === 0 ? code : code | 0x80)).rejected).toBe(0);
  });

  it.each([
    ["any", (i: number) => ["\r\n", "\r", "\n"][i % 3]!],
    ["any", () => "\n\r"],
    ["CRLF", (i: number) => (i % 20 === 3 ? "\n" : "\r\n")],
    ["CRLF", (i: number) => (i % 20 === 3 ? "\r" : "\r\n")],
    ["CRLF", () => "\r\n\0\0"],
  ] as const)("reads every line of a stream with unsteady line ends (%s)", (terminator, end) => {
    const result = learned(lines((i) => `${kN(i)} kN${end(i)}`));
    expect([result.readings, result.rejected, result.pattern.terminator]).toEqual([300, 0, terminator]);
  });

  it("rejects a line with a NUL inside it", () => {
    const result = learned(lines((i) => (i === 99 ? "   1\0.00 kN\r\n" : `${kN(i)} kN\r\n`)));
    expect(result.rejected).toBe(1);
  });

  it("makes do with one line, with or without its end", () => {
    expect(learned("12.34 kN\r\n").decoded).toEqual([
      { raw: "12.34 kN", value: 12.34, unit: "kN", forceN: 12340, state: "live" },
    ]);
    expect(learned("12.34 kN").readings).toBe(1);
    expect(learned("12.34 kN").confidence).toBeLessThan(0.5);
  });

  it("passes over headers, rare status lines and lines of another kind", () => {
    const result = learned(
      `FORCE GAUGE READY\r\n${lines((i) => `${i % 60 === 5 ? "LOW BATT\r\n" : ""}${i % 25 === 7 ? "TEMP 23.5 C\r\n" : ""}${kN(i)} kN\r\n`)}`,
    );
    expect([result.readings, result.rejected]).toEqual([300, 1]);
    expect(result.decoded.filter((line) => line.aside === "status").length).toBe(5 + 12);
  });

  it.each([
    "Nm",
    "N.m",
    "N m",
    "N-m",
    "NM",
    "kNm",
    "ft-lb",
    "ft lb",
    "lbf-ft",
    "in-lb",
    "FT-LB",
    "kgf.cm",
    "kgf m",
    "ozf.in",
    "N\xb7m",
  ])("refuses a stream in %s, naming the torque", (unit) => {
    const result = learnPattern(bytesOfText(lines((i) => `${kN(i)} ${unit}\r\n`)));
    expect(result).toMatchObject({ kind: "torque", reason: expect.stringContaining("torque") });
  });

  it("refuses a torque that stands before the number, apart from it, or in lines half of which are cut", () => {
    for (const text of [
      lines((i) => `Nm ${kN(i)}\r\n`),
      lines((i) => `ST,${kN(i)},Nm\r\n`),
      lines((i) => `${`${kN(i)} Nm`.slice(0, i % 3 === 0 ? 10 : 99)}\r\n`),
    ]) {
      expect(learnPattern(bytesOfText(text)).kind).toBe("torque");
    }
  });

  it("rejects by name the lines of a force gauge that was switched to torque", () => {
    const result = learned(lines((i) => `${kN(i)} ${i < 200 ? "N" : "Nm"}\r\n`));
    expect(result.decoded.filter((line) => line.rejected === "torque").length).toBe(100);
  });

  it.each([
    ["nothing", new Uint8Array(0)],
    ["line ends alone", bytesOfText("\r\n\r\n\r\n")],
    ["random bytes", Uint8Array.from({ length: 1_000_000 }, () => Math.floor(noise() * 256))],
    [
      "a wrong baud rate",
      Uint8Array.from(
        { length: 1_000_000 },
        () => [0x00, 0x80, 0xf8, 0x78, 0x66, 0xe6, 0x98, 0xfe][Math.floor(noise() * 8)]!,
      ),
    ],
    ["text without a line end", bytesOfText("12.34 kN ".repeat(1000))],
    [
      "random lines of text",
      bytesOfText(
        Array.from({ length: 50_000 }, () =>
          noise() < 0.05 ? "\n" : String.fromCharCode(32 + Math.floor(noise() * 95)),
        ).join(""),
      ),
    ],
    ["prose", bytesOfText("Meeting at 5 with 12 people.\nBring 3 pens.\nRoom 12, second floor\n")],
    ["a pressure", bytesOfText(lines((i) => `${kN(i)} bar\r\n`))],
  ])("finds no pattern in %s and says why", (_, bytes) => {
    const result = learnPattern(bytes);
    expect(result).toMatchObject({ kind: "nothing", reason: expect.stringMatching(/\w+ \w+/) });
  });
});
