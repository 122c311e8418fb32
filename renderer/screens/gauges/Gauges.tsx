import { useEffect, useState } from "react";
import { useStore } from "zustand";
import type { AdapterRow, GaugeRow } from "../../../app/contract/recordViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { SaveTable } from "../../ui/SaveTable.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { ImportList } from "../importList/ImportList.tsx";
import { importTexts } from "../importList/texts.ts";
import { ReferenceSection } from "../proof/references/ReferenceSection.tsx";
import { TableSection } from "../proof/tables/TableSection.tsx";
import { focusThing } from "../scan/focusThing.ts";
import { AdapterForm } from "./AdapterForm.tsx";
import { AdapterTable } from "./AdapterTable.tsx";
import { adapterRows } from "./adapterRows.ts";
import { GaugeForm } from "./GaugeForm.tsx";
import { GaugeTable } from "./GaugeTable.tsx";
import { gaugeRows } from "./gaugeRows.ts";
import { gaugesTexts } from "./texts.ts";
import "./gauges.css";

type Open =
  | { readonly gauge: GaugeRow | undefined }
  | { readonly adapter: AdapterRow | undefined }
  | { readonly list: "gauges" | "adapters" };

/** A proof that was begun waits here as well. */
function ProofInWork() {
  const core = useCore();
  const words = useWords(gaugesTexts);
  const proof = useStore(core.proof, (state) => state.proof);
  if (proof === undefined) return null;
  return (
    <section className="sheet row in-work" aria-label={words.inWork(proof.gauge.name)}>
      <b>{words.inWork(proof.gauge.name)}</b>
      <a className="button main" href={hrefOf({ place: "proving" })}>
        {words.goOn}
      </a>
    </section>
  );
}

/** Can I trust the gauge? What measures here, when it was proved, when it is due. */
export function Gauges({ find }: { readonly find?: string | undefined }) {
  const speech = useSpeech();
  const words = useWords(gaugesTexts);
  const importWords = useWords(importTexts);
  const gauges = useList("gauges").rows;
  const adapters = useList("adapters").rows;
  const [open, setOpen] = useState<Open>();
  useEffect(() => {
    // A label was scanned: its row, as soon as both lists are there.
    if (find !== undefined && gauges !== undefined && adapters !== undefined) focusThing(find);
  }, [find, gauges, adapters]);
  const close = () => setOpen(undefined);

  const all = [
    ...(gauges ?? []).map(({ gauge, proofState }) => ({ name: gauge.name, state: gauge.state, proofState })),
    ...(adapters ?? []).map(({ adapter, proofState }) => ({ name: adapter.name, state: adapter.state, proofState })),
  ].filter(({ state }) => state === "inUse");
  const names = (proofState: string) => all.filter((one) => one.proofState === proofState).map(({ name }) => name);
  const [off, late, never] = [names("off"), names("pastDue"), names("none")];
  return (
    <div className="stack">
      <header className="place">
        <div>
          <h1>{words.title}</h1>
          {all.length > 0 && (
            <p className="why">
              {off.length > 0 && <b>{words.foundOff(speech.list(off))} </b>}
              {late.length > 0 && <b>{words.pastDue(speech.list(late))} </b>}
              {never.length > 0 && words.unproved(speech.list(never))}
              {off.length + late.length + never.length === 0 && words.allCurrent}
            </p>
          )}
        </div>
      </header>
      <ProofInWork />
      <section className="sheet tall" aria-labelledby="gauges-title">
        <div className="row head">
          <h2 id="gauges-title">{words.gauges}</h2>
          <div className="row">
            <Button icon="add" onClick={() => setOpen({ gauge: undefined })}>
              {words.addGauge}
            </Button>
            <Button icon="takeIn" onClick={() => setOpen({ list: "gauges" })}>
              {importWords["act.gauges"]}
            </Button>
            {gauges !== undefined && gauges.length > 0 && (
              <SaveTable name="gauges" of={words.gauges} table={() => gaugeRows(gauges, speech)} />
            )}
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
            <Button icon="add" onClick={() => setOpen({ adapter: undefined })}>
              {words.addAdapter}
            </Button>
            <Button icon="takeIn" onClick={() => setOpen({ list: "adapters" })}>
              {importWords["act.adapters"]}
            </Button>
            {adapters !== undefined && adapters.length > 0 && (
              <SaveTable name="adapters" of={words.adapters} table={() => adapterRows(adapters, speech)} />
            )}
          </div>
        </div>
        {adapters?.length === 0 ? (
          <p className="why">{words.noAdapters}</p>
        ) : (
          <AdapterTable rows={adapters ?? []} onEdit={(adapter) => setOpen({ adapter })} />
        )}
      </section>
      <ReferenceSection />
      <TableSection />
      {open !== undefined && "gauge" in open && <GaugeForm row={open.gauge} onClose={close} />}
      {open !== undefined && "adapter" in open && <AdapterForm row={open.adapter} onClose={close} />}
      {open !== undefined && "list" in open && <ImportList what={open.list} onClose={close} />}
    </div>
  );
}
