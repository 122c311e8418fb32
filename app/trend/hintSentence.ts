import type { Evidence, Hint, HintPattern } from "./hints.ts";

/** Stands wherever hints are shown: they are read just before someone opens a machine. */
export const hintCaution =
  "Hints come from figures alone and prove nothing. Springs in a clamping unit store energy: opening one is work for " +
  "trained people, by the builder's manual and the local rules.";

/** A hint in English: the pattern, how well it fits, and what speaks for and against it. */
export function hintSentence(hint: Hint): string {
  const fit = { strong: "fits well", some: "fits in part", weak: "cannot be ruled out" }[hint.strength];
  const pro = `For it: ${hint.for.map(evidenceWords).join("; ")}.`;
  const con = hint.against.length === 0 ? "" : ` Against it: ${hint.against.map(evidenceWords).join("; ")}.`;
  return `${patternWords[hint.pattern]}: ${fit}. ${pro}${con}`;
}

const patternWords: Readonly<Record<HintPattern, string>> = {
  tiringSprings: "Tiring springs",
  brokenSpring: "A broken spring",
  dryGripper: "A dry or dirty gripper",
  wornGripper: "A worn gripper or wedge",
  wrongSetting: "A release stroke or set dimension that is off",
  taperChip: "A chip or damage on the taper at one check",
  backPressure: "Pressure left in the release line",
  gaugeOff: "The gauge or the adapter, not the spindle",
};

/** One piece of evidence in English, without capital and full stop. */
function evidenceWords(e: Evidence): string {
  switch (e.code) {
    case "steadyFall":
      return `the force falls by ${percent(e.share)} a year${chance(e)}`;
    case "noStep":
      return "no step was found";
    case "stepBeside":
      return `there was also a step about ${day(e)}`;
    case "scatterSteady":
      return "the scatter from clamping to clamping stays";
    case "scatterGrows":
      return `the scatter from clamping to clamping grows${e.ratio === undefined ? "" : `, ${e.ratio.toFixed(1)} times by now`}${chance(e)}`;
    case "scatterAboveLimit":
      return "the last check scatters more than those before allow";
    case "creepGrows":
      return `the force creeps in the hold, ${e.ratio!.toFixed(1)} times as much as at first`;
    case "creepSteady":
      return "the creep in the hold has not grown";
    case "levelLower":
      return "the force is lower than it was";
    case "fewChecks":
      return `only ${e.n} checks so far`;
    case "stepDown":
      return `the force stepped down by ${percent(e.share)} about ${day(e)}, with no service then`;
    case "sizeFitsSprings":
      return "one or a few discs of a long stack cost about as much";
    case "secondStep":
      return `it stepped down ${e.n} times`;
    case "slopeExplains":
      return "a slope explains the values nearly as well";
    case "fellFromBaseline":
      return "the last checks lie clearly under the first ones of this segment";
    case "cameBack":
      return `the force came back about ${day(e)}`;
    case "roseAfterCleaning":
      return `it rose by ${percent(e.share)} after cleaning or lubricating on ${day(e)}`;
    case "cleaningDidNotHelp":
      return `cleaning or lubricating on ${day(e)} did not raise it`;
    case "fellAtService":
      return `it fell by ${percent(e.share)} at the service of ${day(e)}`;
    case "roseAtSetting":
      return `it rose by ${percent(e.share)} when the setting was worked on (${day(e)})`;
    case "aboveNominal":
      return `it now lies ${percent(e.share)} above nominal`;
    case "riseIsItsPurpose":
      return "a rise is what that service is for";
    case "oneOffThenBack":
      return `the check of ${day(e)} was off by ${percent(e.share)}, the next one was back`;
    case "doesNotReturn":
      return `force was left after the release in ${e.n} of the last checks`;
    case "onlyOnce":
      return "it happened once only";
    case "gaugeChangedThen":
      return "the gauge was changed just then";
    case "adapterChangedThen":
      return "the adapter was changed just then";
    case "movedWithOthers":
      return `${e.n} spindles measured with the same gauge or adapter moved together by ${percent(e.share)} since ${day(e)}`;
    case "othersSteady":
      return "the other spindles measured with it did not move";
  }
}

const percent = (share: number | undefined) => `${(Math.abs(share ?? 0) * 100).toFixed(1)} %`;
const chance = (e: Evidence) => (e.p === undefined ? "" : ` (p = ${e.p < 0.001 ? "under 0.001" : e.p.toFixed(3)})`);
const day = (e: Evidence) => new Date(e.atMs ?? 0).toISOString().slice(0, 10);
