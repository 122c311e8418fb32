import { type ForceUnit, forceUnits } from "../../app/quantity/forceUnits.ts";
import type { SimulatedGauge } from "./SimulatedGauge.ts";

/** One command: its argument in words, and what it does; the answer is said back, a refusal is thrown. */
type GaugeCommand = {
  readonly takes: string;
  readonly does: string;
  readonly run: (gauge: SimulatedGauge, argument: string | undefined) => string;
};

/** How long a rig takes from one load to the next. */
const RIG_RAMP_S = 0.4;

/** Everything a gauge and its spindle can be told. */
export const gaugeCommands: Readonly<Record<string, GaugeCommand>> = {
  clamp: {
    takes: "[NEWTONS]",
    does: "clamps, with what the mechanism gives or with this force",
    run(gauge, argument) {
      const forceN = argument === undefined ? undefined : number(argument, 0, gauge.options.capacityN * 2);
      return gauge.clamp(forceN) ? "clamped" : "already clamped";
    },
  },
  release: { takes: "", does: "releases", run: (gauge) => (gauge.release() ? "released" : "nothing is clamped") },
  dry: { takes: "", does: "the gripper runs dry", run: (gauge) => changed(gauge, { dryness: 1 }) },
  grease: { takes: "", does: "the gripper is cleaned and greased", run: (gauge) => changed(gauge, { dryness: 0 }) },
  breakSpring: {
    takes: "[DISCS]",
    does: "so many discs of the spring pack break (2)",
    run: (gauge, n) => changed(gauge, { brokenDiscs: gauge.mechanism.brokenDiscs + number(n ?? "2", 0, 50) }),
  },
  tire: {
    takes: "SHARE",
    does: "the springs have lost this share (0.1)",
    run: (gauge, n) => changed(gauge, { tired: number(n ?? "0.1", 0, 0.9) }),
  },
  newSprings: { takes: "", does: "a new spring pack", run: (gauge) => changed(gauge, { brokenDiscs: 0, tired: 0 }) },
  spike: {
    takes: "[NEWTONS]",
    does: "one reading far off",
    run(gauge, n) {
      gauge.spike(number(n ?? String(gauge.options.capacityN * 0.3), -1e7, 1e7));
      return "one reading off";
    },
  },
  knock: {
    takes: "[NEWTONS]",
    does: "somebody bumps against the gauge",
    run(gauge, n) {
      gauge.load.knock(gauge.tS, 0.12, number(n ?? String(gauge.options.capacityN * 0.02), 0, 1e7));
      return "knocked";
    },
  },
  overload: {
    takes: "[SECONDS]",
    does: "pressed beyond the gauge's capacity (1 s)",
    run(gauge, n) {
      gauge.load.press(gauge.tS, number(n ?? "1", 0.01, 3_600), gauge.options.capacityN * 1.2);
      return "overloaded";
    },
  },
  load: {
    takes: "[NEWTONS]",
    does: "the proving rig loads to this force, and stands (0)",
    run(gauge, argument) {
      const forceN = number(argument ?? "0", 0, gauge.options.capacityN * 2);
      gauge.load.rig.set(gauge.tS, forceN, RIG_RAMP_S);
      return `loads to ${forceN} N`;
    },
  },
  unload: {
    takes: "",
    does: "the proving rig unloads",
    run(gauge) {
      gauge.load.rig.set(gauge.tS, 0, RIG_RAMP_S);
      return "unloads";
    },
  },
  slip: {
    takes: "[PERCENT]",
    does: "the holder slips in the gripper (3 %)",
    run(gauge, n) {
      gauge.load.slip(gauge.tS, number(n ?? "3", 0, 90) / 100);
      return "slipped";
    },
  },
  residual: {
    takes: "PERCENT",
    does: "at each release this share of the force stays",
    run(gauge, n) {
      gauge.residual = number(n ?? "0", 0, 90) / 100;
      return `${gauge.residual * 100} % stays`;
    },
  },
  zero: {
    takes: "NEWTONS",
    does: "the indication without load",
    run(gauge, n) {
      gauge.zeroN = number(n ?? "0", -1e6, 1e6);
      return `zero at ${gauge.zeroN} N`;
    },
  },
  drift: {
    takes: "NEWTONS",
    does: "the zero moves by so much an hour",
    run(gauge, n) {
      gauge.driftNPerHour = number(n ?? "0", -1e6, 1e6);
      return `drifts ${gauge.driftNPerHour} N/h`;
    },
  },
  silent: {
    takes: "[SECONDS]",
    does: "sends nothing for so long (10 s)",
    run(gauge, n) {
      gauge.beSilent(number(n ?? "10", 0, 86_400));
      return "silent";
    },
  },
  corrupt: {
    takes: "SHARE",
    does: "this share of the bytes is hit (0.01), 0 ends it",
    run(gauge, n) {
      gauge.corruption.perByte = number(n ?? "0.01", 0, 1);
      return `${gauge.corruption.perByte * 100} % of the bytes are hit`;
    },
  },
  unit: {
    takes: "UNIT",
    does: "switches the unit it shows",
    run(gauge, name) {
      const unit = forceUnits.find((known) => known === name);
      if (unit === undefined) throw new RangeError(`unit must be one of ${forceUnits.join(", ")}`);
      gauge.unit = unit satisfies ForceUnit;
      return `shows ${unit}`;
    },
  },
};

/**
 * Does what one line of text says: the command's name, then its argument. Answers what was done.
 * @throws RangeError  no such command, or an argument that cannot be
 */
export function runGaugeCommand(gauge: SimulatedGauge, line: string): string {
  const [name = "", argument] = line.trim().split(/\s+/);
  const command = Object.hasOwn(gaugeCommands, name) ? gaugeCommands[name] : undefined;
  if (command === undefined) throw new RangeError(`there is no command ${name}`);
  return command.run(gauge, argument);
}

function changed(gauge: SimulatedGauge, change: Partial<SimulatedGauge["mechanism"]>): string {
  gauge.mechanism = { ...gauge.mechanism, ...change };
  return "from the next clamping on";
}

function number(text: string, least: number, most: number): number {
  const value = Number(text);
  if (text.trim() === "" || !(value >= least && value <= most))
    throw new RangeError(`${text} must be a number from ${least} to ${most}`);
  return value;
}
