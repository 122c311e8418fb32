import { LineDecoder } from "../../app/gauge/LineDecoder.ts";
import { learnPattern } from "../../app/gauge/learnPattern.ts";
import type { LinePattern } from "../../app/gauge/linePattern.ts";
import { bytesOfText, formats, lcg, shownReadings, streamOf } from "../app/gauge/formats.ts";
import type { BenchRow } from "./BenchRow.ts";
import { bare, ours, usual } from "./lines/readline.ts";

/** The numbers of the gauge room: decoding speed against the usual way, flat memory, learning time, what slips through. */
export async function linesBench(): Promise<readonly BenchRow[]> {
  return [...speed(), ...flatness(), learning(), ...slips()];
}

const named = (name: string) => formats.find((format) => format.name === name)!;

function stream(name: string, count: number): Buffer {
  return Buffer.from(bytesOfText(streamOf(named(name), shownReadings(named(name), count))));
}

function patternOf(bytes: Uint8Array): LinePattern {
  const learned = learnPattern(bytes.subarray(0, 8000), { unit: "kN" });
  if (learned.kind !== "learned") throw new Error(learned.reason);
  return learned.pattern;
}

function pieces(bytes: Buffer, size: number): Buffer[] {
  return Array.from({ length: Math.ceil(bytes.length / size) }, (_, i) => bytes.subarray(i * size, (i + 1) * size));
}

const median = (values: readonly number[]) => [...values].sort((a, b) => a - b)[values.length >> 1]!;

/** Interleaved runs, so that whatever else the machine does falls on both alike. */
function speed(): BenchRow[] {
  const bytes = stream("number and unit, padded", 100_000);
  const pattern = patternOf(bytes);
  return [4096, 8].flatMap((size): BenchRow[] => {
    const chunks = pieces(bytes, size);
    const ratios: number[] = [];
    const ceilings: number[] = [];
    for (let round = 0; round < 9; round += 1) {
      const theirs = usual(chunks);
      const own = ours(chunks, pattern);
      const loop = bare(bytes);
      if (own.readings !== theirs.readings || Math.abs(own.sumN - theirs.sumN) > 1e-6 * Math.abs(own.sumN))
        throw new Error("the two ways differ");
      ratios.push(theirs.ms / own.ms);
      ceilings.push(theirs.ms / loop.ms);
    }
    const limit = size === 8 ? 3 : 4;
    const measured = median(ratios);
    const note = `a bare loop over the bytes: ${median(ceilings).toFixed(1)} x`;
    return [
      {
        name: `decoding in ${size}-byte chunks, times the usual way`,
        measured,
        limit,
        unit: "x",
        met: measured >= limit,
        note,
      },
    ];
  });
}

const hundredMillion = 100_000_000;

/** Time and memory over a long stream in 64-byte chunks, made once and pushed again and again. */
function flatness(): BenchRow[] {
  const good = stream("number and unit, padded", 4000);
  const pattern = patternOf(good);
  const noise = lcg(3);
  const endless = Buffer.from(
    bytesOfText(Array.from({ length: 50_000 }, () => String.fromCharCode(32 + Math.floor(noise() * 95))).join("")),
  );
  return [["good lines", good] as const, ["no line end", endless] as const].flatMap(([name, bytes]): BenchRow[] => {
    const chunks = pieces(bytes, 64);
    const decoder = new LineDecoder(pattern);
    let last = 0;
    const sink = {
      reading: (forceN: number) => {
        last = forceN;
      },
      rejected() {},
    };
    const run = (count: number) => {
      const start = process.hrtime.bigint();
      for (let sent = 0; sent < count; sent += bytes.length) for (const chunk of chunks) decoder.push(chunk, sink);
      return Number(process.hrtime.bigint() - start) / 1e6;
    };
    run(hundredMillion / 10);
    const before = process.memoryUsage().rss;
    const times = Array.from({ length: 10 }, () => run(hundredMillion / 10));
    const grown = (process.memoryUsage().rss - before) / 2 ** 20;
    // The least of five leaves out what other programs took from the processor.
    const slower = Math.min(...times.slice(5)) / Math.min(...times.slice(0, 5));
    const seconds = times.reduce((sum, ms) => sum + ms, 0) / 1000;
    decoder.push(bytesOfText("\r\n   12.34 kN\r\n"), sink);
    if (last !== 12_340) throw new Error("the next good line was not read right");
    return [
      { name: `100 million bytes, ${name}: memory grown`, measured: grown, limit: 10, unit: "MB", met: grown <= 10 },
      {
        name: `100 million bytes, ${name}: second half against first`,
        measured: slower,
        limit: 1.25,
        unit: "x",
        met: slower <= 1.25,
        note: `${seconds.toFixed(2)} s in all`,
      },
    ];
  });
}

/** From 200 lines of each format, the least of three runs: what the program takes, not what others took from it. */
function learning(): BenchRow {
  const samples = formats.map((format) => bytesOfText(streamOf(format, shownReadings(format, 200))));
  const runs = samples.map((bytes) =>
    [0, 1, 2].map(() => {
      const start = process.hrtime.bigint();
      learnPattern(bytes);
      return Number(process.hrtime.bigint() - start) / 1e6;
    }),
  );
  const times = runs.map((three) => Math.min(...three));
  const measured = Math.max(...times);
  return {
    name: `learning from 200 lines, slowest of ${formats.length} formats`,
    measured,
    limit: 50,
    unit: "ms",
    met: measured < 50,
    note: `median ${median(times).toFixed(1)} ms; slowest single run ${Math.max(...runs.flat()).toFixed(1)} ms`,
  };
}

/** One altered byte a line, without a checksum and with: how many are read as another number. No limit is set for the first. */
function slips(): BenchRow[] {
  return ["number and unit, padded", "bare number of fixed width", "XOR after a star"].map((name) => {
    const lines = streamOf(named(name), shownReadings(named(name), 3000))
      .split("\r\n")
      .slice(0, -1);
    const pattern = patternOf(bytesOfText(`${lines.slice(0, 600).join("\r\n")}\r\n`));
    const random = lcg(9);
    let read = 0;
    let tried = 0;
    const value = (line: string) => {
      let forceN: number | undefined;
      const note = (n: number) => {
        forceN = n;
      };
      new LineDecoder(pattern).push(bytesOfText(`${line}\r\n`), { reading: note, rejected() {} });
      return forceN;
    };
    for (const line of lines) {
      const at = Math.floor(random() * line.length);
      const altered = line.slice(0, at) + String.fromCharCode(32 + Math.floor(random() * 95)) + line.slice(at + 1);
      if (altered === line) continue;
      tried += 1;
      const got = value(altered);
      if (got !== undefined && got !== value(line)) read += 1;
    }
    const measured = (100 * read) / tried;
    const checked = named(name).checked === true;
    const limit = checked ? 0 : 100;
    return {
      name: `one byte altered (${name}): read as another number`,
      measured,
      limit,
      unit: "%",
      met: measured <= limit,
      note: checked ? "" : "shown, not limited",
    };
  });
}
