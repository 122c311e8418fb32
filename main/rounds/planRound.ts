import type { Parsed } from "../../app/contract/methods.ts";
import { AppError } from "../../app/contract/result.ts";
import type { Round } from "../../app/ledger/round.ts";
import type { RouteStop } from "../../app/round/route/Route.ts";
import { routeOf } from "../../app/round/route/routeOf.ts";
import type { Db } from "../store/db.ts";
import { adapterList } from "../store/records/adapters.ts";
import { readSpindle } from "../store/records/spindles.ts";
import { adapterFor } from "./adapterFor.ts";
import { expected } from "./expected.ts";

/**
 * The body of a round from what the page asks for: each spindle with the adapter that fits it, in walking order, numbered
 * from 1 where no location is given, beside the numbers that stand already.
 * @param before  the round that is changed: its stops keep their numbers, and why they were passed
 * @throws AppError  a spindle that is not there, twice in it, or not in use
 */
export function planRound(db: Db, input: Parsed<"rounds.save">, roundId: string, before?: Round): Round {
  const kept = new Map(before?.stops.map((stop) => [stop.spindleId, stop]));
  const adapters = adapterList(db);
  const seen = new Set<string>();
  const stops = input.stops.map((stop) => {
    const standing = readSpindle(db, stop.spindleId);
    if (standing === undefined)
      throw new AppError("notFound", "There is no such spindle in this data file.", { key: "noSpindle" });
    const { spindle } = standing;
    if (spindle.state !== "inUse")
      throw new AppError("invalid", `${spindle.name} is retired. Take it out of the round.`, { key: "stopRetired" });
    if (seen.has(spindle.spindleId))
      throw new AppError("invalid", `${spindle.name} stands in the round twice.`, { key: "stopTwice" });
    seen.add(spindle.spindleId);
    const adapterId = stop.adapterId ?? adapterFor(spindle.taper, adapters)?.adapterId ?? null;
    const location = stop.location ?? kept.get(spindle.spindleId)?.location ?? undefined;
    return { spindle, adapterId, location, expectedN: expected(db, standing)?.forceN ?? null };
  });
  const route = routeOf(
    stops.map(
      ({ spindle, adapterId }): RouteStop => ({
        spindleId: spindle.spindleId,
        machine: spindle.machine,
        area: spindle.area,
        order: spindle.order,
        tool: adapterId ?? spindle.taper,
      }),
    ),
  );
  const sequence = input.asSet === true ? [...stops.keys()] : route.sequence;
  const walked = sequence.map((i) => stops[i]!);
  const tools = walked.map((s) => s.adapterId ?? s.spindle.taper);
  const numbers = freeNumbers(walked.map((s) => s.location));
  return {
    roundId,
    name: input.name,
    on: input.on,
    gaugeId: input.gaugeId ?? null,
    operatorId: input.operatorId ?? null,
    stops: walked.map(({ spindle, adapterId, location, expectedN }, i) => {
      const passed = kept.get(spindle.spindleId)?.passed;
      return {
        spindleId: spindle.spindleId,
        adapterId,
        location: location ?? numbers[i]!,
        expectedN: expectedN === null ? null : Math.round(expectedN),
        ...(passed === undefined ? {} : { passed }),
      };
    }),
    made: input.made,
    found: input.asSet === true ? "asSet" : route.found,
    adapterChanges: tools.filter((tool, i) => i > 0 && tool !== tools[i - 1]).length,
    walk: input.asSet === true ? 0 : route.walk,
    note: input.note === undefined || input.note === "" ? null : input.note,
    state: "open",
  };
}

/** For each stop its place from 1; where that number is another's already, the next that is nobody's. */
function freeNumbers(taken: readonly (string | undefined)[]): readonly string[] {
  const used = new Set(taken.filter((location) => location !== undefined));
  let free = taken.length;
  return taken.map((location, i) => {
    if (location !== undefined) return location;
    let number = String(i + 1);
    while (used.has(number)) number = String(++free);
    used.add(number);
    return number;
  });
}
