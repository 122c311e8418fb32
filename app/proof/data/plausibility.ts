import { loadCellLimits } from "../tables/loadCellLimits.ts";
import type { ProofRemark } from "./ProofRemark.ts";
import type { ZeroAndCreep } from "./zeroAndCreep.ts";

/**
 * Remarks on a zero or creep that no sound strain gauge has: beyond what is allowed to a load cell of class D with
 * 1000 intervals at its full load. Nothing is refused for it.
 * @see OIML R 60-1:2021, 5.5.1 and 5.5.2
 */
export function plausibility({ f0, c }: ZeroAndCreep): readonly ProofRemark[] {
  const limits = loadCellLimits("D", intervals);
  const percent = (v: number) => (100 * v) / intervals;
  const beyond = (code: "creepLarge" | "zeroChangeLarge", value: number | undefined, limit: number): ProofRemark[] =>
    value === undefined || Math.abs(value) <= percent(limit)
      ? []
      : [{ code, about: `${Math.abs(value).toPrecision(2)} % over ${percent(limit).toPrecision(2)} %` }];
  return [...beyond("zeroChangeLarge", f0, limits.zeroReturn), ...beyond("creepLarge", c, limits.creep)];
}

const intervals = 1000;
