import { useState } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { NetworkForm } from "./NetworkForm.tsx";
import { PortRow } from "./PortRow.tsx";
import { linkTexts } from "./texts.ts";
import { useGaugeChoice } from "./useGaugeChoice.ts";
import { useOpenLink } from "./useOpenLink.ts";
import { usePorts } from "./usePorts.ts";
import "./link.css";

/** Every way to a gauge: the ports of this machine, the network, the simulated one. */
export function ConnectPanel({ of }: { /** The gauge that is meant; absent: asked for. */ readonly of?: string }) {
  const words = useWords(linkTexts);
  const { list } = usePorts();
  const open = useOpenLink();
  const { gauges, gaugeId: chosen, choose } = useGaugeChoice();
  const gaugeId = of ?? chosen;
  const [network, setNetwork] = useState(false);
  const demo = useProgram((state) => state.program?.demo === true);
  const simulated = (
    <li key="simulated">
      <Button kind={demo ? "main" : "plain"} onClick={() => open({ kind: "simulated" }, gaugeId)}>
        {words.simulated}
      </Button>
      <small>{words.simulatedAbout}</small>
    </li>
  );
  return (
    <section className="connect" aria-labelledby="connect-title">
      <h2 id="connect-title">{words.connectTitle}</h2>
      <p className="why soft">{words.connectWhy}</p>
      {of === undefined && gauges.length > 0 && (
        <SelectField
          label={words.which}
          value={gaugeId ?? ""}
          options={[
            ...gauges.map(({ gaugeId: id, name, serial }) => ({
              value: id,
              label: [name, serial].filter(Boolean).join(" · "),
            })),
            { value: "", label: words.newGauge },
          ]}
          onChoose={(id) => choose(id === "" ? undefined : id)}
        />
      )}
      <ul>
        {demo && simulated}
        {list?.ports.map((port) => (
          <PortRow key={port.path} port={port} gaugeId={gaugeId} />
        ))}
        {list?.ports.length === 0 && <li className="soft">{list.hint ?? words.noPorts}</li>}
        <li>
          <Button aria-expanded={network} onClick={() => setNetwork(!network)}>
            {words.network}
          </Button>
          <small>{words.networkAbout}</small>
        </li>
        {network && (
          <li>
            <NetworkForm gaugeId={gaugeId} />
          </li>
        )}
        {!demo && simulated}
      </ul>
    </section>
  );
}
