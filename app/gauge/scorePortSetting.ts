import { type LearnResult, learnPattern } from "./learnPattern.ts";

/** How a serial port was set while it listened. */
export type PortSetting = {
  readonly baudRate: number;
  readonly dataBits: 7 | 8;
  readonly parity: "none" | "even" | "odd";
};

export type PortCapture = { readonly setting: PortSetting; readonly bytes: Uint8Array };

export type ScoredSetting = {
  readonly setting: PortSetting;
  /** 0 to 1: how sure the bytes are lines of a gauge under this setting. */
  readonly score: number;
  readonly learned: LearnResult;
};

/** Below this nothing was understood; three good lines reach it. */
export const leastPortScore = 0.4;

/**
 * How well bytes heard under one setting make sense: the confidence with which a line pattern was learned from them.
 * Where eight bits were needed to hear seven and a parity, the setting is nearly right and scores a little less than
 * the right one. Lines with a torque prove the setting as well as lines with a force.
 */
export function scorePortSetting(capture: PortCapture): ScoredSetting {
  const learned = learnPattern(capture.bytes, { keepLines: 100 });
  return { setting: capture.setting, score: scoreOf(learned), learned };
}

/** The setting under which the lines decode, or undefined when they do under none of those heard so far. */
export function bestPortSetting(captures: readonly PortCapture[]): ScoredSetting | undefined {
  const scored = captures.map(scorePortSetting).filter(({ score }) => score >= leastPortScore);
  // The first of equals stands: callers list the usual settings first.
  return scored.reduce<ScoredSetting | undefined>(
    (best, next) => (best !== undefined && best.score >= next.score ? best : next),
    undefined,
  );
}

function scoreOf(learned: LearnResult): number {
  if (learned.kind === "nothing") return 0;
  if (learned.kind === "torque") return 0.9;
  return learned.confidence * (learned.pattern.parity === "none" ? 1 : 0.9);
}
