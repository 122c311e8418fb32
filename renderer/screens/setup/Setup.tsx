import { useWords } from "../../words/SpeechContext.tsx";
import { DataSection } from "./DataSection.tsx";
import { GaugeSection } from "./GaugeSection.tsx";
import { OperatorsSection } from "./OperatorsSection.tsx";
import { PcSection } from "./PcSection.tsx";
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
        <WorksSection />
        <div className="stack">
          <PcSection />
          <OperatorsSection />
          <DataSection />
        </div>
      </div>
    </div>
  );
}
