import { useWords } from "../../words/SpeechContext.tsx";
import { BackupSection } from "./BackupSection.tsx";
import { CalendarSection } from "./calendar/CalendarSection.tsx";
import { DataSection } from "./DataSection.tsx";
import { GaugeSection } from "./GaugeSection.tsx";
import { OperatorsSection } from "./OperatorsSection.tsx";
import { PcSection } from "./PcSection.tsx";
import { SupportSection } from "./SupportSection.tsx";
import { setupTexts } from "./texts.ts";
import { WorksSection } from "./WorksSection.tsx";
import "./setup.css";

/** Make it mine. */
export function Setup() {
  const words = useWords(setupTexts);
  return (
    <div className="stack setup">
      <h1>{words.title}</h1>
      <GaugeSection />
      <div className="halves">
        <div className="stack">
          <div className="stack">
            <WorksSection />
            <CalendarSection />
          </div>
          <BackupSection />
        </div>
        <div className="stack">
          <PcSection />
          <OperatorsSection />
          <DataSection />
          <SupportSection />
        </div>
      </div>
    </div>
  );
}
