export const proofRemarkCodes = [
  "needsPositions",
  "needsRepeat",
  "needsZeroReturn",
  "needsReversibilityOrCreep",
  "needsReadings",
  "needsForces",
  "needsRuns",
  "needsSteps",
  "outsideClasses",
  "rangeTooShort",
  "noClassInMethod",
  "fewSteps",
  "stepNotInAllSeries",
  "loadTwice",
  "loadOutOfOrder",
  "resolutionUnknown",
  "referenceUncertaintyUnknown",
  "runsUnknown",
  "lackOfFit",
  "tableFromMemory",
  "tableEntered",
  "zeroMissing",
  "creepLarge",
  "zeroChangeLarge",
] as const;

/**
 * Why a class or a figure is absent, or what a reader should know of the data. Codes, so that a screen can put them
 * into its language; `remarkSentence` has the English.
 */
export type ProofRemark = {
  readonly code: (typeof proofRemarkCodes)[number];
  /** The figure, label or list the sentence speaks of. */
  readonly about?: string | undefined;
};

const words: Readonly<Record<ProofRemark["code"], string>> = {
  needsPositions: "the method needs rising series at three mounting positions; found: #",
  needsRepeat: "the method needs two rising series at the same mounting position",
  needsZeroReturn: "the method needs the zero before and after a series",
  needsReversibilityOrCreep: "the method needs falling loads in two series, or the creep readings at 30 s and 300 s",
  needsReadings: "the method needs more readings: #",
  needsForces: "the method needs more different forces: #",
  needsRuns: "the method needs at least two runs: with one reading a step the repeatability is unknown",
  needsSteps: "no load was read in all the series the method compares",
  outsideClasses: "the readings miss the limits of every class: #",
  rangeTooShort: "the loads do not reach down far enough: #",
  noClassInMethod: "this method gives no class",
  fewSteps: "fewer steps than the method asks for: #",
  stepNotInAllSeries: "left out, since not every series has it: #",
  loadTwice: "the same load stands twice in one series and was averaged: #",
  loadOutOfOrder: "a rising series falls: #",
  resolutionUnknown:
    "the gauge's resolution was not given: its limits were not tested and its share is not in the uncertainty",
  referenceUncertaintyUnknown: "the reference's uncertainty was not given: it is not in the uncertainty stated here",
  runsUnknown: "the readings name no runs: they are taken as independent of one another",
  lackOfFit: "the curve misses repeated loads by more than they scatter: #",
  tableEntered: "limits as this laboratory has entered them by its edition: #",
  tableFromMemory: "limits from memory: check against your edition of the standard (#)",
  creepLarge: "creep beyond that of the coarsest load cells (#): let the gauge rest, look at its mounting",
  zeroChangeLarge:
    "the zero changes by more than that of the coarsest load cells (#): warm up, preload, look at the mounting",
  zeroMissing: "no zero was read before the loads: the indications are taken as net",
};

/** The remark in one English sentence. */
export function remarkSentence(remark: ProofRemark): string {
  return words[remark.code].replace("#", remark.about ?? "not given");
}
