import { useState } from "react";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { go } from "../../state/routeStore.ts";
import { Button } from "../../ui/Button.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { VerdictMark } from "../../ui/verdict/VerdictMark.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { changeSeries } from "../measure/acts.ts";
import { ReportAct } from "../records/ReportAct.tsx";
import { useReport } from "../shell/useReport.ts";
import { SpindleForm } from "../spindleForm/SpindleForm.tsx";
import { lastList } from "../spindles/filterAddress.ts";
import { CheckTable } from "./CheckTable.tsx";
import { ControlPanel } from "./control/ControlPanel.tsx";
import { Hints } from "./Hints.tsx";
import { LikeSection } from "./LikeSection.tsx";
import { LimitsList } from "./LimitsList.tsx";
import { ReleaseStop } from "./ReleaseStop.tsx";
import { ScatterSection } from "./ScatterSection.tsx";
import { ServiceEffects } from "./ServiceEffects.tsx";
import { ServiceForm } from "./ServiceForm.tsx";
import { SpindleSentence } from "./SpindleSentence.tsx";
import { StopNotice } from "./StopNotice.tsx";
import { spindleTexts } from "./texts.ts";
import { TrendPanel } from "./trend/TrendPanel.tsx";
import { useSpindlePage } from "./useSpindlePage.ts";
import "./spindle.css";

type Open = "service" | "edit" | "release";

/** How is this one? Its verdict, its history, what it looks like, and every check. */
export function SpindleScreen({ spindleId }: { readonly spindleId: string }) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const common = useWords(commonTexts);
  const worksUnit = useProgram((state) => state.works?.unitShown ?? "kN");
  const { page, failed, again } = useSpindlePage(spindleId);
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  const done = () => {
    close();
    again();
  };
  const back = <a href={lastList()}>{`← ${words.all}`}</a>;
  if (failed !== undefined) return <Problem act={back}>{errorWords(failed, speech)}</Problem>;
  if (page === undefined) return <p role="status">{common.loading}</p>;

  const { row } = page;
  const { spindle } = row;
  const unit = forceUnitOf(spindle.unitShown ?? worksUnit);
  const measure = async () => {
    if ((await report(changeSeries(core, "series.tag", { spindleId }))) !== undefined) go({ place: "measure" });
  };
  const about = [spindle.taper, spindle.machine, spindle.area, spindle.unitSerial && words.unit(spindle.unitSerial)];
  return (
    <div className="stack">
      <div className="back">{back}</div>
      <header className="place spindle-head">
        {row.verdict !== undefined && <VerdictMark verdict={row.verdict} size={64} />}
        <div>
          <h1>
            {spindle.name} <small>{about.filter((part) => part !== undefined && part !== "").join(" · ")}</small>
          </h1>
          <SpindleSentence page={page} unit={unit} />
        </div>
        <div className="row">
          <Button kind="main" onClick={measure}>
            {words.measureNow}
          </Button>
          <Button icon="service" onClick={() => setOpen("service")}>
            {words.noteService}
          </Button>
          <Button icon="edit" onClick={() => setOpen("edit")}>
            {words.edit}
          </Button>
          <ReportAct of={{ what: "spindle", spindleId }} />
        </div>
      </header>
      {row.stopped && <StopNotice page={page} onRelease={() => setOpen("release")} />}
      <div className="two">
        <TrendPanel page={page} unit={unit} />
        <aside className="sheet">
          {page.trend.points.length > 0 && <Hints page={page} />}
          <LimitsList page={page} unit={unit} />
        </aside>
      </div>
      <div className="facts">
        <ServiceEffects page={page} unit={unit} />
        <ScatterSection page={page} />
        <LikeSection row={row} unit={unit} />
      </div>
      <ControlPanel page={page} unit={unit} />
      <CheckTable page={page} unit={unit} />

      {open === "service" && <ServiceForm spindleId={spindleId} onDone={done} onClose={close} />}
      {open === "edit" && <SpindleForm spindle={spindle} onClose={done} />}
      {open === "release" && <ReleaseStop page={page} unit={unit} onDone={done} onClose={close} />}
    </div>
  );
}
