import { useCallback, useEffect, useState } from "react";
import type { CheckPage } from "../../../app/contract/recordViews.ts";
import type { Failure } from "../../../app/contract/result.ts";
import { whatSettlesFiled } from "../../../app/verdict/whatSettlesFiled.ts";
import { reasonsText } from "../../../app/words/reasonSentence.ts";
import { remarkWords } from "../../../app/words/remarkWords.ts";
import { settlingWords } from "../../../app/words/settlingWords.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { ReasonDialog } from "../../ui/ReasonDialog.tsx";
import { VerdictMark } from "../../ui/verdict/VerdictMark.tsx";
import { capital } from "../../words/capital.ts";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ReportAct } from "../records/ReportAct.tsx";
import { useReport } from "../shell/useReport.ts";
import { BudgetTable } from "./BudgetTable.tsx";
import { Conditions } from "./Conditions.tsx";
import { CycleTable } from "./CycleTable.tsx";
import { checkTexts } from "./texts.ts";
import { WaveformPanel } from "./WaveformPanel.tsx";
import "./check.css";

/** One filed check, opened again: everything that led to its verdict. */
export function CheckScreen({ spindleId, checkId }: { readonly spindleId: string; readonly checkId: string }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(checkTexts);
  const common = useWords(commonTexts);
  const verdictWords = useWords(verdictTexts);
  const worksUnit = useProgram((state) => state.works?.unitShown ?? "kN");
  const row = useList("spindles").rows?.find((one) => one.spindle.spindleId === spindleId);
  const { page, failed, again } = useCheckPage(checkId);
  const baselineId = useBaselineId(spindleId);
  const [asking, setAsking] = useState<"void" | "baseline">();

  const back = <a href={hrefOf({ place: "spindle", spindleId })}>{`← ${words.backTo(row?.spindle.name ?? "")}`}</a>;
  if (failed !== undefined) return <Problem act={back}>{errorWords(failed, speech)}</Problem>;
  if (page === undefined) return <p role="status">{common.loading}</p>;
  const { check } = page;
  const unit = forceUnitOf(row?.spindle.unitShown ?? worksUnit);
  const settling = check.verdict === "cannotTell" ? whatSettlesFiled(check, check.series.n) : undefined;
  const counts = page.row.voided === undefined || page.row.voided === null;
  const act = async (reason: string) => {
    const done =
      asking === "void"
        ? await report(core.client.call("checks.void", { checkId, reason }))
        : await report(core.client.call("baseline.choose", { spindleId, checkId, reason }));
    setAsking(undefined);
    if (done !== undefined) again();
  };
  return (
    <div className="stack">
      <div className="back">{back}</div>
      <header className="place spindle-head">
        <VerdictMark verdict={check.verdict} size={64} />
        <div>
          <h1>{words.title(speech.dateTime(Date.parse(check.measuredAt)))}</h1>
          <p className="why">
            <b>{capital(verdictWords[check.verdict], speech)}.</b>{" "}
            {reasonsText(check.reasons, speech, unit, page.row.expandedN)}
          </p>
          {settling !== undefined && (
            <p className="why">
              <b>{words.settling}:</b> {settlingWords(settling, speech, unit)}
            </p>
          )}
          {check.weakenedBy.length > 0 && (
            <p className="small">
              <b>{words.weakened}:</b>{" "}
              {speech.list(check.weakenedBy.map((remark) => remarkWords(remark, speech, unit)))}
            </p>
          )}
          {!counts && <p className="voided">{words.voided(page.row.voided?.reason ?? "")}</p>}
        </div>
        <div className="row">
          <ReportAct of={{ what: "check", checkId }} />
          {counts && !page.row.isBaseline && <Button onClick={() => setAsking("baseline")}>{words.baselineAct}</Button>}
          {counts && <Button onClick={() => setAsking("void")}>{words.voidAct}</Button>}
        </div>
      </header>
      {page.today !== undefined && page.today !== null && (
        <section className="sheet note">
          <h2>{words.today}</h2>
          <p>
            <b>{capital(verdictWords[page.today.verdict], speech)}.</b>{" "}
            {reasonsText(page.today.reasons, speech, unit, page.row.expandedN)}
          </p>
          <p className="small">
            {page.today.changed.length === 0
              ? words.todayProgram
              : words.todayChanged(speech.list(page.today.changed.map((what) => words[`changed.${what}`])))}
          </p>
          <small>{words.todayWhy}</small>
        </section>
      )}
      <WaveformPanel page={page} baselineId={baselineId} unit={unit} />
      <CycleTable cycles={check.cycles} unit={unit} />
      <div className="halves">
        {check.budget !== null && <BudgetTable budget={check.budget} unit={unit} />}
        <Conditions page={page} unit={unit} />
      </div>
      {asking !== undefined && (
        <ReasonDialog
          title={asking === "void" ? words.voidTitle : words.baselineTitle}
          act={asking === "void" ? words.voidAct : words.baselineAct}
          onReason={act}
          onClose={() => setAsking(undefined)}
        >
          {asking === "void" ? words.voidWhy : words.baselineWhy}
        </ReasonDialog>
      )}
    </div>
  );
}

function useCheckPage(checkId: string) {
  const core = useCore();
  const [page, setPage] = useState<CheckPage>();
  const [failed, setFailed] = useState<Failure>();
  const again = useCallback(async () => {
    const answer = await core.client.call("checks.get", { checkId });
    if (answer.ok) setPage(answer.value);
    else setFailed(answer.error);
  }, [core, checkId]);
  useEffect(() => {
    again();
  }, [again]);
  return { page, failed, again };
}

/** The spindle's baseline check; found among its checks. */
function useBaselineId(spindleId: string): string | undefined {
  const core = useCore();
  const [id, setId] = useState<string>();
  useEffect(() => {
    let gone = false;
    core.client.call("spindles.page", { spindleId }).then((answer) => {
      if (answer.ok && !gone) setId(answer.value.checks.find((check) => check.isBaseline)?.checkId);
    });
    return () => {
      gone = true;
    };
  }, [core, spindleId]);
  return id;
}
