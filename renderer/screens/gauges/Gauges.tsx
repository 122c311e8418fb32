import { useState } from "react";
import type { AdapterRow, GaugeRow } from "../../../app/contract/recordViews.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ImportList } from "../importList/ImportList.tsx";
import { importTexts } from "../importList/texts.ts";
import { AdapterForm } from "./AdapterForm.tsx";
import { AdapterTable } from "./AdapterTable.tsx";
import { GaugeForm } from "./GaugeForm.tsx";
import { GaugeTable } from "./GaugeTable.tsx";
import { gaugesTexts } from "./texts.ts";
import "./gauges.css";

type Open =
  | { readonly gauge: GaugeRow | undefined }
  | { readonly adapter: AdapterRow | undefined }
  | { readonly list: "gauges" | "adapters" };

/** Can I trust the gauge? What measures here, when it was proved, when it is due. */
export function Gauges() {
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const importWords = useWords(importTexts);
  const gauges = useList("gauges").rows;
  const adapters = useList("adapters").rows;
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);

  const all = [
    ...(gauges ?? []).map(({ gauge, proofState }) => ({ name: gauge.name, state: gauge.state, proofState })),
    ...(adapters ?? []).map(({ adapter, proofState }) => ({ name: adapter.name, state: adapter.state, proofState })),
  ].filter(({ state }) => state === "inUse");
  const names = (proofState: string) => all.filter((one) => one.proofState === proofState).map(({ name }) => name);
  const [late, never] = [names("pastDue"), names("none")];
  return (
    <div className="stack">
      <header className="place">
        <div>
          <h1>{words.title}</h1>
          {all.length > 0 && (
            <p className="why">
              {late.length > 0 && <b>{words.pastDue(speech.list(late))} </b>}
              {never.length > 0 && words.unproved(speech.list(never))}
              {late.length + never.length === 0 && words.allCurrent}
            </p>
          )}
        </div>
      </header>
      <section className="sheet tall" aria-labelledby="gauges-title">
        <div className="row head">
          <h2 id="gauges-title">{words.gauges}</h2>
          <div className="row">
            <Button onClick={() => setOpen({ gauge: undefined })}>{words.addGauge}</Button>
            <Button onClick={() => setOpen({ list: "gauges" })}>{importWords["act.gauges"]}</Button>
          </div>
        </div>
        {gauges?.length === 0 ? (
          <p className="why">{words.noGauges}</p>
        ) : (
          <GaugeTable rows={gauges ?? []} onEdit={(gauge) => setOpen({ gauge })} />
        )}
      </section>
      <section className="sheet tall" aria-labelledby="adapters-title">
        <div className="row head">
          <h2 id="adapters-title">{words.adapters}</h2>
          <div className="row">
            <Button onClick={() => setOpen({ adapter: undefined })}>{words.addAdapter}</Button>
            <Button onClick={() => setOpen({ list: "adapters" })}>{importWords["act.adapters"]}</Button>
          </div>
        </div>
        {adapters?.length === 0 ? (
          <p className="why">{words.noAdapters}</p>
        ) : (
          <AdapterTable rows={adapters ?? []} onEdit={(adapter) => setOpen({ adapter })} />
        )}
      </section>
      {open !== undefined && "gauge" in open && <GaugeForm row={open.gauge} onClose={close} />}
      {open !== undefined && "adapter" in open && <AdapterForm row={open.adapter} onClose={close} />}
      {open !== undefined && "list" in open && <ImportList what={open.list} onClose={close} />}
    </div>
  );
}
