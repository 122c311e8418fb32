import { spawn } from "node:child_process";
import { once } from "node:events";
import { resolve } from "node:path";
import { createInterface } from "node:readline";
import type { Cycle, Waveform } from "../../app/cycle/Cycle.ts";
import { type LinePattern, linePatternSchema } from "../../app/gauge/linePattern.ts";
import type { CheckReason } from "../../app/ledger/check.ts";
import type { Adapter, Gauge, ServiceEvent, Spindle, StoredPattern, Works } from "../../app/ledger/register.ts";
import type { ForceUnit } from "../../app/quantity/forceUnits.ts";
import { LinkError } from "./LinkProblem.ts";
import { StreamFeed } from "./StreamFeed.ts";

/** A check of the demo works as far as the gauge and the people at it go; the verdict is still to be found. */
export type DemoCheck = {
  readonly spindleId: string;
  readonly adapterId: string;
  readonly gaugeId: string;
  readonly operatorId: string;
  readonly measuredAt: string;
  readonly offsetMinutes: number;
  readonly reason: CheckReason;
  readonly spindleWarm: boolean;
  readonly temperatureC: number;
  readonly counter: number;
  readonly note: string | null;
  readonly unit: ForceUnit;
  readonly rateHz: number;
  /** What the gauge sent. */
  readonly lines: string;
};

/** The same, read by the one way from bytes to cycles. */
export type DemoSeries = Omit<DemoCheck, "lines"> & {
  readonly pattern: StoredPattern;
  readonly cycles: readonly { readonly cycle: Cycle; readonly waveform: Waveform }[];
};

export type DemoOperator = {
  readonly operatorId: string;
  readonly name: string;
  readonly role: "technician" | "planner";
};

export type DemoRecord =
  | { readonly kind: "works"; readonly body: Works }
  | { readonly kind: "operator"; readonly body: DemoOperator }
  | { readonly kind: "linePattern"; readonly body: StoredPattern }
  | { readonly kind: "gauge"; readonly body: Gauge }
  | { readonly kind: "adapter"; readonly body: Adapter }
  | { readonly kind: "spindle"; readonly body: Spindle }
  | { readonly kind: "serviceEvent"; readonly body: ServiceEvent }
  | { readonly kind: "check"; readonly body: DemoSeries };

type RawRecord = Exclude<DemoRecord, { kind: "check" }> | { readonly kind: "check"; readonly body: DemoCheck };

export type DemoWorksOptions = {
  /** The day the three years end, a plain date; absent: today. */
  readonly end?: string | undefined;
  readonly seed?: number | undefined;
  readonly program?: string | undefined;
};

/**
 * The demo works from the simulator, a program beside this one: the register first, then checks and service events in the
 * order they happened.
 * @throws LinkError `simulatorFailed`  the program did not run to its end
 */
export async function* readDemoWorks(options: DemoWorksOptions = {}): AsyncIterable<DemoRecord> {
  const program = options.program ?? resolve(import.meta.dirname, "..", "..", "simulator", "works", "main.ts");
  const args = [...(options.end === undefined ? [] : ["--end", options.end]), "--seed", String(options.seed ?? 1)];
  const child = spawn(process.execPath, [program, ...args], {
    stdio: ["ignore", "pipe", "pipe"],
    env: { ...process.env, ELECTRON_RUN_AS_NODE: "1", NODE_NO_WARNINGS: "1" },
  });
  let said = "";
  child.stderr.on("data", (text) => {
    said = (said + text).slice(-2_000);
  });
  const ended = once(child, "close");
  try {
    const patterns = new Map<string, { stored: StoredPattern; read: LinePattern }>();
    const gauges = new Map<string, Gauge>();
    for await (const line of createInterface({ input: child.stdout })) {
      const record = JSON.parse(line) as RawRecord; // our own program's; the store checks what it files
      if (record.kind === "linePattern") {
        patterns.set(record.body.patternId, {
          stored: record.body,
          read: linePatternSchema.parse(record.body.pattern),
        });
      }
      if (record.kind === "gauge") gauges.set(record.body.gaugeId, record.body);
      if (record.kind !== "check") {
        yield record;
        continue;
      }
      const gauge = gauges.get(record.body.gaugeId)!;
      const { stored, read } = patterns.get(gauge.patternId!)!;
      yield { kind: "check", body: readSeries(record.body, stored, read, gauge.capacityN) };
    }
    const [code] = await ended;
    if (code !== 0) throw new LinkError("simulatorFailed", `the demo works could not be made: ${said.trim()}`);
  } finally {
    child.kill();
  }
}

function readSeries(
  { lines, ...check }: DemoCheck,
  stored: StoredPattern,
  pattern: LinePattern,
  capacityN: number,
): DemoSeries {
  const cycles: { cycle: Cycle; waveform: Waveform }[] = [];
  const feed = new StreamFeed(
    { pattern, rateHz: check.rateHz, capacityN },
    { cycle: (cycle, waveform) => cycles.push({ cycle, waveform }) },
  );
  feed.push(Buffer.from(lines, "latin1"));
  feed.end();
  return { ...check, pattern: stored, cycles };
}
