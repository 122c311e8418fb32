import type { Cycle } from "../../../app/cycle/Cycle.ts";
import { CycleDetector } from "../../../app/cycle/CycleDetector.ts";
import { findSpikes } from "../../../app/cycle/read/spikes.ts";
import type { ProofReading } from "../../../app/proof/data/ProofReading.ts";
import { iso376Proof } from "../../../app/proof/iso376/iso376Proof.ts";
import { isRefused } from "../../../app/proof/method/ProofOptions.ts";
import { type Published, type Runner, sourceLine, type Trial } from "../Trial.ts";

/** The way from readings to a force, and a gauge against a reference. */

const SETTLED_N = 18_000;
const OMEGA = 2 * Math.PI * 8;
const RATE_HZ = 1000;

/** A snap clamping as the textbook's second-order step, through the whole detector. */
export const stepResponse: Runner = ({ source, by_damping: rows }) =>
  rows
    .filter((row: Published) => row.damping_ratio >= 0.2) // under it the ring outlasts the rise the detector allows
    .flatMap((row: Published): Trial[] => {
      const cycles: Cycle[] = [];
      const detector = new CycleDetector({ rateHz: RATE_HZ }, (cycle) => cycles.push(cycle));
      for (const forceN of clamping(row.damping_ratio)) detector.push(forceN, "live", Number.NaN);
      detector.end();
      const [cycle] = cycles;
      const of = `step response, damping ${row.damping_ratio}`;
      const overshoot = cycle?.overshoot;
      return [
        { name: `${of}, cycles found`, source: sourceLine(source), expected: 1, got: cycles.length },
        {
          name: `${of}, settled force in newtons`,
          source: sourceLine(source),
          expected: SETTLED_N,
          got: cycle?.settledN,
          within: { absolute: 2 },
        },
        {
          name: `${of}, overshoot in per cent`,
          source: sourceLine(source),
          expected: row.overshoot_percent,
          got: overshoot === undefined ? undefined : 100 * overshoot,
          within: { absolute: 0.1 },
        },
      ];
    });

/** Two seconds of rest, the step, six seconds of hold, rest; with half a newton of hum, since no gauge stands still. */
function clamping(damping: number): number[] {
  const root = Math.sqrt(1 - damping ** 2);
  const at = (t: number) =>
    1 - (Math.exp(-damping * OMEGA * t) / root) * Math.sin(OMEGA * root * t + Math.acos(damping));
  const hold = Array.from({ length: 6 * RATE_HZ }, (_, i) => SETTLED_N * at(i / RATE_HZ));
  const rest = new Array<number>(2 * RATE_HZ).fill(0);
  return [...rest, ...hold, ...rest].map((forceN, i) => forceN + 0.5 * Math.sin(i * 2.399963));
}

/** Where the documented filter finds a spike, and nowhere else. */
export const spikes: Runner = ({ hampel: { cases, definition } }) =>
  cases.map(
    ({ name, values, replaced }: Published): Trial => ({
      name: `spikes in ${name}`,
      source: `outlier filter by running medians, from its documentation: ${definition}`,
      expected: JSON.stringify(replaced),
      got: JSON.stringify(findSpikes(Float64Array.from(values), 0, values.length, 0.02, 0)),
    }),
  );

export const iso376: Runner = ({ source, worked_example: { inputs, expected } }) => {
  const got = iso376Proof(readingsOf(inputs), {});
  if (isRefused(got))
    return [{ name: "the worked example", source: sourceLine(source), expected: "a proof", got: got.refused }];
  const list = (
    name: string,
    want: readonly number[],
    values: readonly (number | undefined)[],
    absolute: number,
  ): Trial[] =>
    want.map((expectedValue, i) => ({
      name: `${name}, step ${i + 1}`,
      source: sourceLine(source),
      expected: expectedValue,
      got: values[i],
      within: { absolute },
    }));
  return [
    ...list(
      "mean",
      expected.Xr,
      got.steps.map((s) => s.mean),
      5e-12,
    ),
    ...list(
      "reproducibility b",
      expected.b,
      got.steps.map((s) => s.b),
      1e-8,
    ),
    ...list(
      "repeatability b'",
      expected.b_prime,
      got.steps.map((s) => s.bPrime),
      1e-8,
    ),
    ...list(
      "interpolation fc",
      expected.fc,
      got.steps.map((s) => s.fc),
      1e-8,
    ),
    ...list(
      "reversibility v",
      expected.v,
      got.steps.map((s) => s.v),
      1e-8,
    ),
    {
      name: "class by step",
      source: sourceLine(source),
      expected: JSON.stringify(expected.class_by_step),
      got: JSON.stringify(got.steps.map((s) => s.class)),
    },
  ];
};

/** The worked example's readings in the order a laboratory takes them. */
function readingsOf(inputs: Published): ProofReading[] {
  const series = (
    run: string,
    positionDeg: number,
    direction: "up" | "down",
    shown: readonly number[],
  ): ProofReading[] => {
    const rows = shown.map((indication, i) => ({
      reference: inputs.force_kN[i],
      indication,
      direction,
      run,
      step: String(i + 1),
      positionDeg,
    }));
    return direction === "down" ? rows.toReversed() : rows;
  };
  const one = (indication: number, direction: ProofReading["direction"]): ProofReading[] => [
    { reference: 0, indication, direction, run: "1", step: undefined, positionDeg: 0 },
  ];
  return [
    ...one(inputs.i0, "zeroBefore"),
    ...series("1", 0, "up", inputs.X1),
    ...one(inputs.i30, "creep30"),
    ...one(inputs.i300, "creep300"),
    ...one(inputs.i_f, "zeroAfter"),
    ...series("2", 0, "up", inputs.X2),
    ...series("3", 120, "up", inputs.X3),
    ...series("3", 120, "down", inputs.X4_decreasing),
    ...series("4", 240, "up", inputs.X5),
    ...series("4", 240, "down", inputs.X6_decreasing),
  ];
}
