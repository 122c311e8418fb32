import type { ProofSeries } from "./seriesOf.ts";

export type ZeroAndCreep = {
  /** Greatest change of the zero over a series, percent of the greatest net indication, with its sign; undefined without a zero before and one after. */
  readonly f0: number | undefined;
  /** Change of the indication from 30 s to 300 s, percent of the greatest net indication, without sign. */
  readonly c: number | undefined;
};

/**
 * Relative zero error and creep of a proof. Where no series has both zeros, the first before and the last after count.
 * @param series  in the order they were taken; the greatest load of the first rising one is the divisor
 * @returns  undefined members also where there is no loaded series to relate them to
 * @see ISO 376:2011, 7.5.4 and 7.5.6 (from memory)
 */
export function zeroAndCreep(series: readonly ProofSeries[]): ZeroAndCreep {
  const greatest = series.find((s) => s.up.length > 0)?.up.at(-1)?.net;
  if (greatest === undefined || greatest === 0) return { f0: undefined, c: undefined };
  const pairs = series.map((s) => [s.zeroBefore, s.zeroAfter] as const);
  const own = pairs.filter((p) => p[0] !== undefined && p[1] !== undefined);
  const first = pairs.find((p) => p[0] !== undefined)?.[0];
  const last = pairs.findLast((p) => p[1] !== undefined)?.[1];
  const changes =
    own.length > 0 ? own.map((p) => p[1]! - p[0]!) : first !== undefined && last !== undefined ? [last - first] : [];
  const zero = changes.reduce<number | undefined>(
    (most, v) => (most === undefined || Math.abs(v) > Math.abs(most) ? v : most),
    undefined,
  );
  const early = series.find((s) => s.creep30 !== undefined)?.creep30;
  const late = series.find((s) => s.creep300 !== undefined)?.creep300;
  return {
    f0: zero === undefined ? undefined : (100 * zero) / greatest,
    c: early === undefined || late === undefined ? undefined : (100 * Math.abs(late - early)) / Math.abs(greatest),
  };
}
