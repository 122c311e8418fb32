import { useState } from "react";
import { useStore } from "zustand";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Caution } from "../../ui/feedback/Caution.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { ConnectPanel } from "../link/ConnectPanel.tsx";
import { useReport } from "../shell/useReport.ts";
import { SpindleForm } from "../spindleForm/SpindleForm.tsx";
import { TourOffer } from "../tour/TourOffer.tsx";
import { welcomeTexts } from "./texts.ts";
import "./welcome.css";

/** The first start, without any data: what this is, and two ways to begin. */
export function Welcome({ onMeasure }: { readonly onMeasure: () => void }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(welcomeTexts);
  const connected = useStore(core.link, ({ link }) => link !== undefined && link.state !== "closed");
  const [adding, setAdding] = useState(false);
  const [connecting, setConnecting] = useState(false);
  const openDemo = async () => {
    if ((await report(core.client.call("program.openDemo", {}))) !== undefined) core.loadAnew();
  };
  return (
    <div className="welcome stack">
      <header>
        <h1>{words.title}</h1>
        <p className="why">{words.what}</p>
      </header>
      <div className="ways">
        <section className="sheet">
          <h2>{words.begin}</h2>
          <ol>
            <li>
              <div>
                <h3>{words.step1}</h3>
                <p className="soft">{words.step1Why}</p>
              </div>
              <Button kind="main" onClick={() => setAdding(true)}>
                {words.step1Act}
              </Button>
            </li>
            <li>
              <div>
                <h3>{words.step2}</h3>
                <p className="soft">{words.step2Why}</p>
              </div>
              {connected ? (
                <b>{words.done}</b>
              ) : (
                <Button aria-expanded={connecting} onClick={() => setConnecting(!connecting)}>
                  {words.step2Act}
                </Button>
              )}
            </li>
            {connecting && !connected && (
              <li className="panel">
                <ConnectPanel />
              </li>
            )}
            <li>
              <div>
                <h3>{words.step3}</h3>
                <p className="soft">{words.step3Why}</p>
              </div>
              <Button onClick={onMeasure}>{words.step3Act}</Button>
            </li>
          </ol>
          <Caution title={words.cautionTitle}>{words.caution}</Caution>
        </section>
        <section className="sheet">
          <h2>{words.tryTitle}</h2>
          <p className="why">{words.tryWhy}</p>
          <div className="row">
            <Button onClick={openDemo}>{words.tryAct}</Button>
          </div>
          <TourOffer />
        </section>
      </div>
      {adding && <SpindleForm onClose={() => setAdding(false)} />}
    </div>
  );
}
