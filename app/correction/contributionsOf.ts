import { defaultAssumptions } from "./assumptions.ts";
import type { Contribution } from "./Budget.ts";
import type { BudgetInput } from "./BudgetInput.ts";

type Line = Contribution;
type Source = Line["source"];

/**
 * The lines of a check's uncertainty budget, each as a standard uncertainty in newtons at the taper. Nothing is counted
 * twice:
 * - the scatter of a series contains the noise in its holds, so the hold's noise stands for a single clamping alone,
 *   and only where no earlier scatter of the spindle stands in for it;
 * - a scatter of the size of the rounding or more contains the rounding, so the resolution counts only where its
 *   standard uncertainty exceeds the standard deviation of one clamping; it is common to equal readings and not divided by √n;
 * - the zero is one and the same for all cycles and is not divided by √n; its own rounding takes the place of its
 *   noise where its readings are quieter than the rounding.
 * @returns  lines above zero, in the order of `BudgetInput`
 * @throws RangeError  a negative or unfinite figure; a series of several without its scatter
 * @see JCGM 100:2008 (GUM) 4.2 (type A), 4.3.7 and F.2.2.1 (rectangles, resolution), clause 8
 */
export function contributionsOf(input: BudgetInput): readonly Contribution[] {
  const { forceN, repeats, zero, temperature, drift } = input;
  const sensitivity = Math.abs(input.sensitivity ?? 1);
  const force = Math.abs(forceN);
  if (!(repeats.n >= 1)) throw new RangeError(`a budget requires at least one clamping, got ${repeats.n}`);
  const scatter = scatterLines(input, sensitivity);
  const rounding = (sensitivity * (input.resolutionN ?? 0)) / ROOT_12;
  const zeroNoise = sensitivity * (zero?.noiseN ?? 0);
  const zeroReading = sensitivity * (zero?.readingN ?? zero?.noiseN ?? 0);
  const misalignment = input.misalignment ?? { halfWidth: defaultAssumptions.misalignment, assumed: true };
  const lines: Line[] = [
    ...scatter.lines,
    rectangle("resolution", rounding > scatter.ofOneN * (1 + 1e-12) ? rounding : 0, false),
    zeroReading >= rounding ? known("zero", zeroNoise, Infinity, false, "A") : rectangle("zero", rounding, false),
    rectangle("zero", (sensitivity * (zero?.halfChangeN ?? 0)) / ROOT_3, false),
    share("gaugeProof", force, input.gaugeProof),
    share("adapter", force, input.adapter),
    rectangle(
      "temperature",
      (force * (temperature?.perKelvin ?? 0) * Math.abs(temperature?.differenceK ?? 0)) / ROOT_3,
      temperature?.assumed,
    ),
    rectangle("drift", (force * (drift?.perYear ?? 0) * Math.max(0, drift?.years ?? 0)) / ROOT_3, drift?.assumed),
    rectangle("misalignment", (force * misalignment.halfWidth) / ROOT_3, misalignment.assumed),
  ];
  for (const { source, standardN } of lines) {
    if (!(standardN >= 0 && standardN < Infinity))
      throw new RangeError(`the uncertainty of ${source} must be 0 or more, got ${standardN}`);
  }
  return lines.filter(({ standardN }) => standardN > 0);
}

const ROOT_3 = Math.sqrt(3);
const ROOT_12 = Math.sqrt(12);

/** What clamping again would change, and the standard deviation of one clamping, to hold against the rounding. */
function scatterLines(
  { repeats, earlierScatter, holdN }: BudgetInput,
  sensitivity: number,
): { lines: Line[]; ofOneN: number } {
  const { n, sN } = repeats;
  if (n > 1) {
    if (sN === undefined) throw new RangeError("a series of several clampings requires their standard deviation");
    return { lines: [known("repeatability", sN / Math.sqrt(n), n - 1, false, "A")], ofOneN: sN };
  }
  if (earlierScatter !== undefined) {
    const { sN: earlierN, degreesOfFreedom } = earlierScatter;
    return { lines: [known("repeatability", earlierN, degreesOfFreedom, false, "A")], ofOneN: earlierN };
  }
  const holdNoise = sensitivity * (holdN ?? 0);
  return { lines: [known("holdNoise", holdNoise, Infinity, false, "A")], ofOneN: holdNoise };
}

/** A standard uncertainty as it stands: Student's t where few readings are behind it, else normal. */
function known(source: Source, standardN: number, degreesOfFreedom: number, assumed: boolean, type: "A" | "B"): Line {
  const distribution = degreesOfFreedom < Infinity ? "t" : "normal";
  return { source, type, distribution, standardN, degreesOfFreedom, assumed };
}

function share(source: Source, force: number, given: BudgetInput["adapter"]): Line {
  const degreesOfFreedom = given?.degreesOfFreedom ?? Infinity;
  return known(source, force * (given?.relative ?? 0), degreesOfFreedom, given?.assumed ?? false, "B");
}

function rectangle(source: Source, standardN: number, assumed: boolean | undefined): Line {
  return {
    source,
    type: "B",
    distribution: "rectangular",
    standardN,
    degreesOfFreedom: Infinity,
    assumed: assumed ?? false,
  };
}
