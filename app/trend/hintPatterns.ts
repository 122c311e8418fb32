import type { Facts } from "./hintFacts.ts";
import type { Evidence, HintPattern } from "./hints.ts";

type Look = { readonly pro: readonly Evidence[]; readonly con: readonly Evidence[] };
type Maybe = Evidence | false | undefined;

/** Each pattern and what speaks for and against it. Common practice, no source. */
export const hintPatterns: readonly { readonly pattern: HintPattern; readonly look: (facts: Facts) => Look }[] = [
  { pattern: "tiringSprings", look: tiringSprings },
  { pattern: "brokenSpring", look: brokenSpring },
  { pattern: "dryGripper", look: dryGripper },
  { pattern: "wornGripper", look: wornGripper },
  { pattern: "wrongSetting", look: wrongSetting },
  { pattern: "taperChip", look: taperChip },
  { pattern: "backPressure", look: backPressure },
  { pattern: "gaugeOff", look: gaugeOff },
];

function tiringSprings(f: Facts): Look {
  if (!f.falls) return nothing;
  return weighed(
    [
      steadyFall(f, f.fall!.p < 0.01 ? 3 : 2),
      f.steps.length === 0 && { code: "noStep", weight: 1 },
      scatterSteady(f, 1),
    ],
    [
      scatterGrows(f, 2),
      f.stepsDown.length > 0 && { code: "stepBeside", weight: 1, atMs: f.stepsDown.at(-1)!.atMs },
      f.n < 8 && { code: "fewChecks", weight: 1, n: f.n },
      movedWithOthers(f, 3),
    ],
  );
}

function brokenSpring(f: Facts): Look {
  const step = f.stepsDown.at(-1);
  if (step === undefined) {
    if (f.alarm?.direction !== "down" || f.falls) return nothing;
    return weighed([{ code: "fellFromBaseline", weight: 2 }], [scatterGrows(f, 1), movedWithOthers(f, 3)]);
  }
  const size = -step.share;
  const back = f.steps.find((s) => s.atMs > step.atMs && s.sizeN > 0.5 * -step.sizeN);
  return weighed(
    [
      { code: "stepDown", weight: step.clear ? 2 : 1, share: step.share, atMs: step.atMs, p: step.p },
      size >= 0.01 && size <= 0.15 && { code: "sizeFitsSprings", weight: 1, share: step.share },
      f.stepsDown.length > 1 && { code: "secondStep", weight: 1, n: f.stepsDown.length },
    ],
    [
      !step.clear && { code: "slopeExplains", weight: 1 },
      step.gaugeChanged && { code: "gaugeChangedThen", weight: 2 },
      step.adapterChanged && { code: "adapterChangedThen", weight: 2 },
      back !== undefined && { code: "cameBack", weight: 2, atMs: back.atMs },
      scatterGrows(f, 1),
      movedWithOthers(f, 3),
    ],
  );
}

function dryGripper(f: Facts): Look {
  const creeps = f.creepRatio !== undefined && f.creepRatio > 1.5;
  if (!f.scatterGrows && !f.scatter?.lastAboveLimit && !creeps) return nothing;
  const helped = cleanings(f).find((s) => s.judged === "rose");
  return weighed(
    [
      scatterGrows(f, 2),
      f.scatter?.lastAboveLimit === true && { code: "scatterAboveLimit", weight: 1 },
      creeps && { code: "creepGrows", weight: 1, ratio: f.creepRatio },
      (f.falls || f.alarm?.direction === "down") && { code: "levelLower", weight: 1, share: f.fall?.perYear },
      helped !== undefined && { code: "roseAfterCleaning", weight: 2, atMs: helped.atMs, share: share(helped) },
    ],
    [
      !f.scatterGrows && scatterSteady(f, 1),
      f.creepRatio !== undefined && !creeps && { code: "creepSteady", weight: 1, ratio: f.creepRatio },
      f.stepsDown.length > 0 && { code: "stepBeside", weight: 1, atMs: f.stepsDown.at(-1)!.atMs },
      movedWithOthers(f, 2),
    ],
  );
}

function wornGripper(f: Facts): Look {
  if (!f.falls || !f.scatterGrows) return nothing;
  const done = cleanings(f);
  const failed = done.find((s) => s.judged === "unchanged" || s.judged === "fell");
  const helped = done.find((s) => s.judged === "rose");
  return weighed(
    [
      steadyFall(f, 1),
      scatterGrows(f, 1),
      failed !== undefined && { code: "cleaningDidNotHelp", weight: 2, atMs: failed.atMs, share: share(failed) },
    ],
    [
      helped !== undefined && { code: "roseAfterCleaning", weight: 2, atMs: helped.atMs, share: share(helped) },
      f.n < 8 && { code: "fewChecks", weight: 1, n: f.n },
      movedWithOthers(f, 3),
    ],
  );
}

function wrongSetting(f: Facts): Look {
  const last = f.services.at(-1);
  if (last === undefined) return nothing;
  const fell = last.judged === "fell";
  const rose = last.judged === "rose";
  const above = f.nominalN !== undefined && last.afterN > 1.05 * f.nominalN;
  if (!fell && !(rose && (above || last.kind === "setting"))) return nothing;
  return weighed(
    [
      fell && { code: "fellAtService", weight: 3, share: share(last), atMs: last.atMs, about: last.kind },
      rose && last.kind === "setting" && { code: "roseAtSetting", weight: 1, share: share(last), atMs: last.atMs },
      rose && above && { code: "aboveNominal", weight: 2, share: last.afterN / f.nominalN! - 1 },
    ],
    [
      rose && last.kind !== "setting" && { code: "riseIsItsPurpose", weight: 1, about: last.kind },
      last.otherGauge && { code: "gaugeChangedThen", weight: 1 },
      last.otherAdapter && { code: "adapterChangedThen", weight: 1 },
    ],
  );
}

function taperChip(f: Facts): Look {
  const stray = f.strays.at(-1);
  if (stray === undefined) return nothing;
  return weighed(
    [{ code: "oneOffThenBack", weight: 2, atMs: stray.atMs, share: stray.valueN / f.levelN - 1 }],
    [
      stray.gaugeChanged && { code: "gaugeChangedThen", weight: 1 },
      stray.adapterChanged && { code: "adapterChangedThen", weight: 1 },
    ],
  );
}

function backPressure(f: Facts): Look {
  if (f.notReleased === 0) return nothing;
  return weighed(
    [
      { code: "doesNotReturn", weight: f.notReleased > 1 ? 3 : 2, n: f.notReleased },
      f.alarm?.direction === "down" && { code: "levelLower", weight: 1 },
    ],
    [f.notReleased === 1 && { code: "onlyOnce", weight: 1 }],
  );
}

function gaugeOff(f: Facts): Look {
  const step = f.steps.findLast((s) => s.gaugeChanged || s.adapterChanged);
  return weighed(
    [
      movedWithOthers(f, 4),
      step?.gaugeChanged === true && { code: "gaugeChangedThen", weight: 2, share: step.share, atMs: step.atMs },
      step?.adapterChanged === true && { code: "adapterChangedThen", weight: 2, share: step.share, atMs: step.atMs },
    ],
    [f.looked && f.sharedMove === undefined && { code: "othersSteady", weight: 1 }],
  );
}

const nothing: Look = Object.freeze({ pro: Object.freeze([]), con: Object.freeze([]) });

function weighed(pro: readonly Maybe[], con: readonly Maybe[]): Look {
  const given = (list: readonly Maybe[]) => list.filter((e): e is Evidence => e !== undefined && e !== false);
  return { pro: given(pro), con: given(con) };
}

const steadyFall = (f: Facts, weight: number): Evidence => ({
  code: "steadyFall",
  weight,
  share: f.fall!.perYear, // only patterns of a falling spindle ask
  p: f.fall!.p,
});

const scatterGrows = (f: Facts, weight: number): Maybe =>
  f.scatterGrows && { code: "scatterGrows", weight, ratio: f.scatter?.ratio, p: f.scatter?.p };

const scatterSteady = (f: Facts, weight: number): Maybe =>
  (f.scatter?.direction === "none" || f.scatter?.direction === "falls") && { code: "scatterSteady", weight };

const movedWithOthers = ({ sharedMove }: Facts, weight: number): Maybe =>
  sharedMove && {
    code: "movedWithOthers",
    weight,
    n: sharedMove.spindles,
    share: sharedMove.shift,
    atMs: sharedMove.sinceMs,
    about: sharedMove.id,
  };

const cleanings = (f: Facts) => f.services.filter((s) => s.kind === "lubricated" || s.kind === "gripper");

const share = (effect: { readonly changeN: number; readonly beforeN: number }) => effect.changeN / effect.beforeN;
