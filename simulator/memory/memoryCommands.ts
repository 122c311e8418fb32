import type { MemoryGauge } from "./MemoryGauge.ts";
import { type WalkPlan, walkRound } from "./walkRound.ts";

/** Commands of the memory's keys and of what happens to it; the same shape as the gauge's own. */
export const memoryCommands: Readonly<Record<string, { readonly takes: string; readonly does: string }>> = {
  store: { takes: "[max]", does: "stores the present reading, or the greatest" },
  location: { takes: "NUMBER", does: "sets the location number; without one, none is stored" },
  clearMemory: { takes: "", does: "empties the memory" },
  removeFirst: { takes: "[COUNT]", does: "takes the oldest readings out and renumbers the rest (1)" },
  resetClock: { takes: "", does: "the battery is changed: the clock begins anew" },
  walk: {
    takes: "PLAN",
    does: "walks a round with slips on the way; the plan is JSON: seed unit fromMs toMs forcesN[]",
  },
  loseLines: { takes: "SHARE", does: "this share of a dump's lines is lost, 0 ends it" },
};

/** Answers what was done; undefined for a command that is none of the memory's. @throws RangeError  an argument that cannot be */
export function runMemoryCommand(memory: MemoryGauge, line: string): string | undefined {
  const [name = "", argument] = line.trim().split(/\s+/);
  switch (name) {
    case "store":
      return memory.store(argument === "max")
        ? `stored as number ${memory.memory.readings.length}`
        : "memory full: not stored";
    case "location":
      memory.location = argument === undefined ? undefined : whole(argument, 0, 999);
      return argument === undefined ? "no location" : `location ${argument}`;
    case "clearMemory":
      memory.memory.clear();
      return "memory empty";
    case "removeFirst":
      memory.memory.removeFirst(whole(argument ?? "1", 0, memory.memory.capacity));
      return `${memory.memory.readings.length} readings left`;
    case "resetClock":
      memory.resetClock();
      return "clock reset";
    case "walk": {
      const plan = JSON.parse(line.trim().slice(name.length)) as WalkPlan; // our own program writes it; `walkRound` refuses what cannot be
      return `walked: ${walkRound(memory.memory, memory.clock, plan)} readings`;
    }
    case "loseLines":
      memory.lossPerLine = share(argument ?? "");
      return `${memory.lossPerLine * 100} % of the lines are lost`;
    default:
      return undefined;
  }
}

function whole(text: string, least: number, most: number): number {
  const value = Number(text);
  if (!(Number.isInteger(value) && value >= least && value <= most))
    throw new RangeError(`${text} must be a whole number from ${least} to ${most}`);
  return value;
}

function share(text: string): number {
  const value = Number(text);
  if (text === "" || !(value >= 0 && value <= 1)) throw new RangeError(`${text} must be a number from 0 to 1`);
  return value;
}
