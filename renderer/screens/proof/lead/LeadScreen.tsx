import { useState } from "react";
import { useStore } from "zustand";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { NextAct } from "../../../../app/proof/plan/nextAct.ts";
import { useCore, useProgram } from "../../../state/CoreContext.ts";
import { Button } from "../../../ui/Button.tsx";
import { Caution } from "../../../ui/feedback/Caution.tsx";
import { Problem } from "../../../ui/feedback/Problem.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { useKeys } from "../../../ui/keys/useKeys.ts";
import { forceUnitOf } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { ConnectPanel } from "../../link/ConnectPanel.tsx";
import { actWords } from "../words/actWords.ts";
import { cautionTexts } from "../words/cautionTexts.ts";
import { proofErrorWords } from "../words/proofErrorWords.ts";
import { ActAnnouncer } from "./ActAnnouncer.tsx";
import { CautionsFirst } from "./CautionsFirst.tsx";
import { LeadDialogs, type LeadOpen } from "./LeadDialogs.tsx";
import { LeadHead } from "./LeadHead.tsx";
import { leadTexts } from "./leadTexts.ts";
import { ReadingPanel } from "./ReadingPanel.tsx";
import { ReferencePorts } from "./ReferencePorts.tsx";
import { RemainingList } from "./RemainingList.tsx";
import { SimulatedLoad } from "./SimulatedLoad.tsx";
import { TypeForm } from "./TypeForm.tsx";
import { useLeadActs } from "./useLeadActs.ts";

type Act = Extract<NextAct, { kind: "act" }>;

/** One act at a time: what to do, how the instruments stand, and the one key that goes on. */
export function LeadScreen({ proof, next }: { readonly proof: RunningProof; readonly next: Act }) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const cautions = useWords(cautionTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const gaugeThere = useStore(core.link, ({ link }) => link !== undefined && link.state !== "closed");
  const { act, refused, busy, forget } = useLeadActs(proof.proofId);
  const [open, setOpen] = useState<LeadOpen>();
  const [hung, setHung] = useState<{ readonly index: number; readonly labels: readonly string[] }>();
  const labels = hung?.index === next.index ? hung.labels : proof.hang?.labels;
  const isRead = next.act.kind === "read";
  const isTyped = isRead && proof.gaugeRead === "typed";
  const weights = isRead && proof.referenceRead === "weights" && labels !== undefined ? { weights: [...labels] } : {};
  const go = () => {
    if (isTyped) document.querySelector<HTMLInputElement>(".type-form input")?.focus();
    else if (isRead) act("proof.take", { index: next.index, ...weights });
    else act("proof.confirm", { index: next.index });
  };
  const isFirst = next.act.kind === "cautions";
  const lastDone = proof.acts.findLast(({ act: done, standing }) => standing === "done" && done.kind === "read");
  const repeatLast = () => {
    if (lastDone !== undefined) setOpen({ repeat: lastDone.index });
  };
  useKeys({
    keys: {
      " ": go,
      ...(isFirst
        ? {}
        : { r: repeatLast, p: () => setOpen("putDown"), t: () => isRead && !isTyped && setOpen("type") }),
    },
    onEnter: go,
  });
  const needsReference = proof.referenceRead === "live" && proof.referenceLink.state === "closed";
  return (
    <div className="proof-lead">
      <LeadHead proof={proof} next={next} onPutDown={() => setOpen("putDown")} />
      <ActAnnouncer proof={proof} next={next} unit={unit} />
      <div className="stage">
        <div className="task">
          {isFirst ? (
            <CautionsFirst proof={proof} unit={unit} />
          ) : (
            <>
              <h2 className="what">{actWords(next.act, speech, unit, next.index === 1)}</h2>
              {proof.cautions.map((code) => (
                <Caution key={code} title={words.caution}>
                  {cautions[code]}
                </Caution>
              ))}
              {next.act.kind === "read" && (
                <ReadingPanel
                  proof={proof}
                  act={next.act}
                  unit={unit}
                  hung={labels}
                  onHung={(changed) => setHung({ index: next.index, labels: changed })}
                />
              )}
            </>
          )}
          {proof.gaugeRead === "live" && !gaugeThere && <ConnectPanel of={proof.gauge.gaugeId} />}
          {needsReference && <ReferencePorts onOpen={(source) => act("proof.openReference", { source })} />}
          <SimulatedLoad proof={proof} act={next.act} unit={unit} />
          {refused !== undefined && <Problem>{proofErrorWords(refused, speech)}</Problem>}
          {isTyped ? (
            <TypeForm
              key={`${next.index} ${proof.acts[next.index]?.repeats ?? 0}`}
              proof={proof}
              act={next.act}
              unit={unit}
              busy={busy}
              onTake={(typed) => act("proof.type", { index: next.index, ...weights, ...typed })}
            />
          ) : (
            <GoOn next={next} busy={busy} onGo={go} />
          )}
          {isRead && proof.gaugeRead === "live" && (
            <Tick checked={proof.auto} onTick={(auto) => act("proof.describe", { auto })}>
              {words.auto}
            </Tick>
          )}
          <div className="row beside">
            {lastDone !== undefined && (
              <Button keyHint="R" onClick={repeatLast}>
                {words.repeat}
              </Button>
            )}
            {isRead && !isTyped && (
              <Button keyHint="T" onClick={() => setOpen("type")}>
                {words.type}
              </Button>
            )}
            {!isFirst && (
              <Button kind="quiet" onClick={() => setOpen("skip")}>
                {words.skip}
              </Button>
            )}
            <Button kind="quiet" onClick={() => setOpen("giveUp")}>
              {words.giveUp}
            </Button>
          </div>
        </div>
        <RemainingList acts={proof.acts} unit={unit} onRepeat={(index) => setOpen({ repeat: index })} />
      </div>
      {open !== undefined && (
        <LeadDialogs
          open={open}
          proof={proof}
          next={next}
          unit={unit}
          weights={weights}
          act={act}
          onClose={() => {
            setOpen(undefined);
            forget();
          }}
        />
      )}
    </div>
  );
}

/** The one act that goes on; filled once the reading may be taken. Pressed before, the core says what is missing. */
function GoOn({ next, busy, onGo }: { readonly next: Act; readonly busy: boolean; readonly onGo: () => void }) {
  const core = useCore();
  const words = useWords(leadTexts);
  const ready = useStore(
    core.proof,
    ({ watch }) => watch !== undefined && watch.index === next.index && watch.why === undefined,
  );
  const isRead = next.act.kind === "read";
  const said = {
    cautions: words.begin,
    mount: words.doneMount,
    preload: words.donePreload,
    read: next.act.kind === "read" && next.act.targetN === 0 ? words.takeZero : words.take,
  }[next.act.kind];
  return (
    <div className="go-on">
      <Button kind={!isRead || ready ? "main" : "plain"} keyHint={words.space} busy={busy} onClick={onGo}>
        {busy && isRead ? words.taking : said}
      </Button>
    </div>
  );
}
