import { useCallback, useState } from "react";
import { useStore } from "zustand";
import { StripChart } from "../../chart/strip/StripChart.tsx";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ConnectPanel } from "../link/ConnectPanel.tsx";
import { ClockDialog } from "./ClockDialog.tsx";
import { ForceColumn } from "./live/ForceColumn.tsx";
import { FormingVerdict } from "./live/FormingVerdict.tsx";
import { LinkTrouble } from "./live/LinkTrouble.tsx";
import { MeasureAnnouncer } from "./live/MeasureAnnouncer.tsx";
import { NextStep } from "./live/NextStep.tsx";
import { Readout } from "./live/Readout.tsx";
import { MovedDialog } from "./round/MovedDialog.tsx";
import { RoundInHand } from "./round/RoundInHand.tsx";
import { useGoTo } from "./round/useGoTo.ts";
import { Acts } from "./series/Acts.tsx";
import { CycleList } from "./series/CycleList.tsx";
import { Series } from "./series/Series.tsx";
import { SeriesSum } from "./series/SeriesSum.tsx";
import { SimulatedFaults } from "./simulated/SimulatedFaults.tsx";
import { SimulatedGauge } from "./simulated/SimulatedGauge.tsx";
import { TypeValue } from "./TypeValue.tsx";
import { AboutCheck } from "./tag/AboutCheck.tsx";
import { TagBar, type TagPart } from "./tag/TagBar.tsx";
import { TagPicker } from "./tag/TagPicker.tsx";
import { measureTexts } from "./texts.ts";
import { useGuardZones } from "./useGuardZones.ts";
import { useMeasureActs } from "./useMeasureActs.ts";
import { useMeasureKeys } from "./useMeasureKeys.ts";
import { useSounds } from "./useSounds.ts";
import { useTaggedSpindle } from "./useTaggedSpindle.ts";
import { useWall } from "./useWall.ts";
import { Warnings } from "./Warnings.tsx";
import "./measure.css";

type Open = TagPart | "typeIn" | { readonly clock: string };

/** What is it now? */
export function Measure() {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(measureTexts);
  const common = useWords(commonTexts);
  const draft = useStore(core.draft, (state) => state.draft);
  const link = useStore(core.link, (state) => state.link);
  const { spindle, unit } = useTaggedSpindle(draft);
  const zones = useGuardZones(draft, spindle);
  const gauge = useList("gauges").rows?.find((row) => row.gauge.gaugeId === draft?.tag.gaugeId)?.gauge;
  const [open, setOpen] = useState<Open>();
  const close = useCallback(() => setOpen(undefined), []);
  const acts = useMeasureActs(
    useCallback(() => setOpen("typeIn"), []),
    useCallback((clock: string) => setOpen({ clock }), []),
  );
  const [faults, setFaults] = useState(false);
  useSounds();
  const wall = useWall();
  const simulated = link?.source?.kind === "simulated";
  const way = useGoTo();
  useMeasureKeys(acts, setOpen, simulated, wall, way.goTo);

  if (draft === undefined) return <p role="status">{common.loading}</p>;
  const limits = spindle?.limits ?? {};
  const topN = limits.maximumN ?? (limits.nominalN ?? (gauge?.capacityN ?? 25_000) / 1.25) * 1.25;
  const connected = link !== undefined && link.state !== "closed" && link.state !== "failed";
  const capacity = gauge && speech.force(gauge.capacityN, unit, 1000);
  return (
    <div className={connected ? "measure" : "measure unconnected"}>
      <h1 className="unseen">{words.title}</h1>
      <MeasureAnnouncer draft={draft} unit={unit} />
      <RoundInHand draft={draft} unit={unit} taper={spindle?.taper} goTo={way.goTo} />
      <TagBar draft={draft} onOpen={setOpen} />
      <Warnings draft={draft} unit={unit} />
      <LinkTrouble />
      {simulated && connected && faults && <SimulatedFaults />}
      <div className="live">
        {connected ? (
          <>
            <Readout
              onWall={wall}
              unit={unit}
              resolutionN={link.resolutionN ?? gauge?.resolutionN}
              capacityN={gauge?.capacityN}
            >
              {simulated && <SimulatedGauge faults={faults} onFaults={setFaults} />}
            </Readout>
            <ForceColumn limits={limits} unit={unit} topN={topN * 1.08} zones={zones} />
          </>
        ) : (
          <ConnectPanel />
        )}
        {draft.cycles.length === 0 && draft.typed === undefined ? (
          <NextStep draft={draft} capacity={capacity} />
        ) : (
          <FormingVerdict draft={draft} unit={unit} />
        )}
      </div>
      {connected && <StripChart limits={limits} unit={unit} capacityN={gauge?.capacityN} zones={zones} />}
      <Series>
        <CycleList draft={draft} unit={unit} />
        <SeriesSum draft={draft} unit={unit} />
        <Acts draft={draft} unit={unit} spindleName={spindle?.name} acts={acts} />
      </Series>

      {way.moved !== undefined && (
        <MovedDialog
          draft={draft}
          from={spindle?.name ?? ""}
          to={way.moved.name}
          onTheirs={() => way.settle("theirs")}
          onDiscard={() => way.settle("discard")}
          onClose={() => way.settle("stay")}
        />
      )}
      {open === "check" && <AboutCheck draft={draft} onClose={close} />}
      {open === "typeIn" && <TypeValue draft={draft} unit={unit} onClose={close} />}
      {typeof open === "object" && <ClockDialog message={open.clock} onClose={close} />}
      {(open === "spindle" || open === "adapter" || open === "gauge" || open === "operator") && (
        <TagPicker part={open} draft={draft} onClose={close} />
      )}
    </div>
  );
}
