import { useStore } from "zustand";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { NextAct } from "../../../../app/proof/plan/nextAct.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { actWords } from "../words/actWords.ts";
import { leadTexts } from "./leadTexts.ts";

/** What a screen reader hears: the next act when it becomes the next, and when it may be taken. No figure, no bar. */
export function ActAnnouncer({
  proof,
  next,
  unit,
}: {
  readonly proof: RunningProof;
  readonly next: Extract<NextAct, { kind: "act" }>;
  readonly unit: ForceUnit;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const ready = useStore(core.proof, ({ watch }) => watch?.index === next.index && watch.phase === "ready");
  const last = proof.acts[next.index - 1];
  const taken =
    last?.taking === undefined
      ? ""
      : words.saidTaken(actWords(last.act, speech, unit), speech.force(last.taking.indicationN, unit));
  return (
    <p className="unseen" role="status">
      {taken} {words.saidNow(actWords(next.act, speech, unit, next.index === 1))} {ready && words.ready}
    </p>
  );
}
