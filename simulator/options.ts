import type { ParseArgsConfig } from "node:util";
import { type ForceUnit, forceUnits, toNewtons } from "../app/quantity/forceUnits.ts";
import { type GaugeOptions, usualGauge } from "./gauge/GaugeOptions.ts";
import type { LineFormatName } from "./gauge/lineFormats.ts";
import { SimulatedGauge } from "./gauge/SimulatedGauge.ts";
import { dumpFormatNames } from "./memory/dumpFormats.ts";
import { MemoryGauge } from "./memory/MemoryGauge.ts";
import type { PlayerOptions, Sending } from "./Player.ts";
import { Random } from "./physics/Random.ts";
import { ReferenceInstrument, usualReference } from "./rig/ReferenceInstrument.ts";

/** What the program takes on its command line. */
export const options = {
  tcp: { type: "string" },
  pty: { type: "boolean" },
  path: { type: "string" },
  file: { type: "string" },
  control: { type: "string" },
  "stop-with-input": { type: "boolean" },
  seed: { type: "string" },
  rate: { type: "string" },
  format: { type: "string" },
  unit: { type: "string" },
  capacity: { type: "string" },
  force: { type: "string" },
  noise: { type: "string" },
  zero: { type: "string" },
  drift: { type: "string" },
  gain: { type: "string" },
  ring: { type: "string" },
  overshoot: { type: "string" },
  speed: { type: "string" },
  seconds: { type: "string" },
  sends: { type: "string" },
  request: { type: "string" },
  memory: { type: "string" },
  "dump-format": { type: "string" },
  "clock-offset": { type: "string" },
  "clock-drift": { type: "string" },
  auto: { type: "boolean" },
  rest: { type: "string" },
  hold: { type: "string" },
  decimals: { type: "string" },
  reference: { type: "string" },
  "reference-rate": { type: "string" },
  "reference-jitter": { type: "string" },
  "reference-unit": { type: "string" },
} as const satisfies ParseArgsConfig["options"];

type Values = { readonly [K in keyof typeof options]?: string | boolean | undefined };

/** @throws RangeError  an option that cannot be, by its name */
export function gaugeFrom(values: Values): SimulatedGauge {
  const gauge: GaugeOptions = {
    seed: count(values, "seed") ?? usualGauge.seed,
    rateHz: count(values, "rate") ?? usualGauge.rateHz,
    // Checked by the gauge itself, which says what there is.
    format: (values.format ?? usualGauge.format) as LineFormatName,
    unit: (values.unit ?? usualGauge.unit) as ForceUnit,
    capacityN: force(values, "capacity") ?? usualGauge.capacityN,
    forceN: force(values, "force") ?? usualGauge.forceN,
    noiseN: force(values, "noise"),
    zeroN: force(values, "zero"),
    driftNPerHour: force(values, "drift"),
    gain: count(values, "gain"),
    ringHz: count(values, "ring"),
    overshoot: count(values, "overshoot"),
    decimals: count(values, "decimals"),
  };
  return new SimulatedGauge(gauge);
}

/** @throws RangeError  an option that cannot be, by its name */
export function playerFrom(values: Values): PlayerOptions {
  const auto = values.auto ? { restS: count(values, "rest") ?? 4, holdS: count(values, "hold") ?? 5 } : undefined;
  return {
    speed: oneOf(values, "speed", ["real", "full"]) ?? "real",
    sends: oneOf<Sending>(values, "sends", ["always", "onRequest", "onKey"]) ?? "always",
    request: typeof values.request === "string" ? unescaped(values.request) : "?\r",
    seconds: count(values, "seconds"),
    auto,
  };
}

/** Undefined without `--memory`. @throws RangeError  an option that cannot be, by its name */
export function memoryFrom(values: Values, gauge: SimulatedGauge, nowMs: number): MemoryGauge | undefined {
  const capacity = count(values, "memory");
  if (capacity === undefined) return undefined;
  return new MemoryGauge(gauge, {
    capacity,
    format: oneOf(values, "dump-format", dumpFormatNames) ?? "list",
    startMs: nowMs - new Date(nowMs).getTimezoneOffset() * 60_000,
    clockOffsetS: count(values, "clock-offset") ?? 0,
    driftSPerDay: count(values, "clock-drift") ?? 0,
  });
}

/** The second instrument, in the same load train; undefined without `--reference`. @throws RangeError  an option that cannot be, by its name */
export function referenceFrom(values: Values, gauge: SimulatedGauge): ReferenceInstrument | undefined {
  if (values.reference === undefined) return undefined;
  const { capacityN, seed, noiseN = capacityN / 5_000 } = gauge.options;
  return new ReferenceInstrument(
    {
      ...usualReference,
      rateHz: count(values, "reference-rate") ?? usualReference.rateHz,
      jitterS: count(values, "reference-jitter") ?? usualReference.jitterS,
      unit: (values["reference-unit"] ?? usualReference.unit) as ForceUnit, // it says itself what there is
      capacityN,
      noiseN: noiseN / 10,
    },
    (tS) => gauge.load.forceN(tS),
    new Random(seed + 1),
  );
}

function count(values: Values, name: keyof typeof options): number | undefined {
  const text = values[name];
  if (text === undefined) return undefined;
  const value = Number(text);
  if (typeof text !== "string" || text.trim() === "" || !Number.isFinite(value))
    throw new RangeError(`--${name} must be a number, got ${text}`);
  return value;
}

/** A force with its unit ("30 kN"); without one, newtons. */
function force(values: Values, name: keyof typeof options): number | undefined {
  const text = values[name];
  if (typeof text !== "string") return undefined;
  const [, figure, symbol = "N"] = /^\s*([+-]?[\d.]+)\s*([A-Za-z]*)\s*$/.exec(text) ?? [];
  const unit = forceUnits.find((known) => known === (symbol === "" ? "N" : symbol));
  if (figure === undefined || unit === undefined || !Number.isFinite(Number(figure))) {
    throw new RangeError(`--${name} must be a force such as "30 kN", got ${text}`);
  }
  return toNewtons(Number(figure), unit);
}

function oneOf<T extends string>(values: Values, name: keyof typeof options, known: readonly T[]): T | undefined {
  const text = values[name];
  if (text === undefined) return undefined;
  const found = known.find((k) => k === text);
  if (found === undefined) throw new RangeError(`--${name} must be one of ${known.join(", ")}, got ${text}`);
  return found;
}

/** `\r`, `\n` and `\xHH` as typed on a command line. */
function unescaped(text: string): string {
  return text.replace(/\\(r|n|x[0-9a-fA-F]{2})/g, (_, code: string) =>
    code === "r" ? "\r" : code === "n" ? "\n" : String.fromCharCode(Number.parseInt(code.slice(1), 16)),
  );
}
