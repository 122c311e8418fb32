import { ReadlineParser } from "@serialport/parser-readline";
import { LineDecoder } from "../../../app/gauge/LineDecoder.ts";
import type { LinePattern } from "../../../app/gauge/linePattern.ts";
import { toNewtons } from "../../../app/quantity/forceUnits.ts";

export type Run = { readonly ms: number; readonly readings: number; readonly sumN: number };

const clock = () => Number(process.hrtime.bigint()) / 1e6;

/** Our way: a learned pattern. */
export function ours(chunks: readonly Uint8Array[], pattern: LinePattern): Run {
  const decoder = new LineDecoder(pattern);
  const total = new Float64Array(1); // a plain number in a closure would be boxed at every reading
  const sink = {
    reading(forceN: number) {
      total[0]! += forceN;
    },
    rejected() {},
  };
  const start = clock();
  for (const chunk of chunks) decoder.push(chunk, sink);
  return { ms: clock() - start, readings: decoder.counts.readings, sumN: total[0]! };
}

/** The usual way: readline parser, one regular expression, `Number`. */
export function usual(chunks: readonly Uint8Array[]): Run {
  const parser = new ReadlineParser({ delimiter: "\r\n" });
  const form = /^\s*([+-]?\d+(?:\.\d+)?)\s*kN$/;
  const total = new Float64Array(1);
  let readings = 0;
  parser.on("data", (line: string) => {
    const found = form.exec(line);
    if (found === null) return;
    readings += 1;
    total[0]! += toNewtons(Number(found[1]), "kN");
  });
  const start = clock();
  for (const chunk of chunks) parser.write(chunk);
  return { ms: clock() - start, readings, sumN: total[0]! };
}

/** The ceiling: a loop over the bytes that does next to nothing with them. */
export function bare(bytes: Uint8Array): Run {
  let readings = 0;
  let sum = 0;
  let figure = 0;
  const start = clock();
  for (let i = 0; i < bytes.length; i += 1) {
    const byte = bytes[i]!;
    if (byte === 10) {
      readings += 1;
      sum += figure;
      figure = 0;
    } else if (byte >= 48 && byte <= 57) figure = figure * 10 + byte - 48;
  }
  return { ms: clock() - start, readings, sumN: sum };
}
