import type { FleetTracks, Track } from "./fleetTracks.ts";

/** A gauge or an adapter, the tracks it was used on, and the dates at which it might have gone off. */
export type Factor = {
  readonly by: "gauge" | "adapter";
  readonly id: string;
  /** Its place in the list of all gauges, or adapters. */
  readonly place: number;
  readonly tracks: readonly Track[];
  /** Times of its checks, one a round, ascending. */
  readonly dates: readonly number[];
  /** How many rounds these dates make. */
  readonly rounds: number;
};

/** More dates than these are thinned evenly: neighbouring rounds tell nearly the same. */
const MOST_DATES = 64;
/** Checks closer than this belong to one day of a round, and to one round. */
const HALF_DAY_MS = 43_200_000;
const ROUND_MS = 10 * 86_400_000;

/** Every gauge and adapter with the dates to be asked about; gauges first. */
export function factorsOf({ tracks, gaugeIds, adapterIds }: FleetTracks, lookBackDays: number): Factor[] {
  const latest = tracks.reduce((last, track) => Math.max(last, track.t.at(-1)!), Number.NEGATIVE_INFINITY);
  const since = latest - lookBackDays * 86_400_000;
  return [...factorsBy("gauge", tracks, gaugeIds, since), ...factorsBy("adapter", tracks, adapterIds, since)];
}

function factorsBy(
  by: "gauge" | "adapter",
  tracks: readonly Track[],
  ids: readonly string[],
  since: number,
): readonly Factor[] {
  const used = ids.map(() => new Set<Track>());
  const times = ids.map((): number[] => []);
  for (const track of tracks) {
    const places = by === "gauge" ? track.gauges : track.adapters;
    for (let i = 0; i < places.length; i += 1) {
      const place = places[i]!;
      if (place < 0) continue;
      if (i === 0 || place !== places[i - 1]) used[place]!.add(track);
      if (track.t[i]! >= since) times[place]!.push(track.t[i]!);
    }
  }
  return ids.map((id, place) => {
    const own = Float64Array.from(times[place]!).sort();
    return { by, id, place, tracks: [...used[place]!], dates: thinned(own), rounds: spaced(own, ROUND_MS).length };
  });
}

function thinned(times: Float64Array): number[] {
  const days = spaced(times, HALF_DAY_MS);
  const every = Math.max(1, Math.ceil(days.length / MOST_DATES));
  return days.filter((_, i) => (days.length - 1 - i) % every === 0);
}

/** The first time, and each that comes long enough after the one before it. */
function spaced(times: Float64Array, gap: number): number[] {
  const firsts: number[] = [];
  for (let i = 0; i < times.length; i += 1) if (i === 0 || times[i]! - times[i - 1]! > gap) firsts.push(times[i]!);
  return firsts;
}
