import { useStore } from "zustand";
import type { ProofAct } from "../../../../app/proof/plan/proofActs.ts";
import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { useCore } from "../../../state/CoreContext.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { refusalTexts } from "../words/proofStateTexts.ts";
import { leadTexts } from "./leadTexts.ts";

/** How far approach, waiting and reading are, in words and as one line that fills. */
export function PhaseLine({
  act,
  index,
  unit,
}: {
  readonly act: Extract<ProofAct, { kind: "read" }>;
  readonly index: number;
  readonly unit: ForceUnit;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const refusals = useWords(refusalTexts);
  // What was heard of the act before is not said of this one.
  const text = useStore(core.proof, ({ watch: heard }) => {
    const watch = heard?.index === index ? heard : undefined;
    if (watch === undefined) return words.phaseIdle;
    const s = (left: number) => speech.number(Math.ceil(left));
    switch (watch.phase) {
      case "idle":
        return watch.why === undefined ? words.phaseIdle : refusals[watch.why];
      case "approach": {
        const now = watch.reference?.forceN ?? watch.gauge?.forceN;
        if (now === undefined || act.targetN === 0) return watch.why === undefined ? words.moving : refusals[watch.why];
        const apart = act.targetN - now;
        return (apart > 0 ? words.goUp : words.goDown)(speech.force(Math.abs(apart), unit));
      }
      case "waiting":
        return words.toStand(s(watch.waitLeftS));
      case "reading":
        return words.toRead(s(watch.readLeftS));
      case "ready":
        return words.ready;
    }
  });
  const share = useStore(core.proof, ({ watch: heard }) => {
    const watch = heard?.index === index ? heard : undefined;
    if (watch === undefined || watch.phase === "idle" || watch.phase === "approach") return 0;
    if (watch.phase === "ready") return 1;
    const left = watch.waitLeftS + watch.readLeftS;
    return Math.round(50 * Math.max(0, 1 - left / Math.max(1, act.waitS + act.readS))) / 50;
  });
  const offset = useStore(core.proof, ({ watch }) =>
    watch?.offset?.kind === "aligned"
      ? words.offset(
          speech.number(watch.offset.offsetS * 1000),
          speech.number(Math.max(1, watch.offset.halfWidthS * 1000)),
        )
      : undefined,
  );
  return (
    <div className="phase">
      <p className={share === 1 ? "ready" : undefined}>{text}</p>
      <span className="fills" aria-hidden="true">
        <span className="bar" style={{ width: `${100 * share}%` }} />
      </span>
      {offset !== undefined && <small>{offset}</small>}
    </div>
  );
}
