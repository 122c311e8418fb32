import { backupTexts } from "./backupTexts.ts";
import { connectTexts } from "./connectTexts.ts";
import { importTexts } from "./importTexts.ts";
import { measureTaskTexts } from "./measureTaskTexts.ts";
import { proofTexts } from "./proofTexts.ts";
import { roundTexts } from "./roundTexts.ts";
import { serviceTexts } from "./serviceTexts.ts";
import { simulatedTexts } from "./simulatedTexts.ts";
import { verdictHelpTexts } from "./verdictHelpTexts.ts";

/** Each task with its page: `title`, `lead`, `step1` …, `picture`, `note1` …, and `caution` where a hand is about to act. */
export const taskTexts = {
  connect: connectTexts,
  measure: measureTaskTexts,
  verdicts: verdictHelpTexts,
  round: roundTexts,
  proof: proofTexts,
  service: serviceTexts,
  backup: backupTexts,
  import: importTexts,
  simulated: simulatedTexts,
} as const;

export type TaskTopic = keyof typeof taskTexts;

// The keys of the object just above, in their order.
export const taskTopics = Object.keys(taskTexts) as readonly TaskTopic[];

export const isTask = (topic: string | undefined): topic is TaskTopic =>
  topic !== undefined && Object.hasOwn(taskTexts, topic);
