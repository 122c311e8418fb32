import { useState } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { NetworkForm } from "./NetworkForm.tsx";
import { PortRow } from "./PortRow.tsx";
import { linkTexts } from "./texts.ts";
import { useOpenLink } from "./useOpenLink.ts";
import { usePorts } from "./usePorts.ts";
import "./link.css";

/** Every way to a gauge: the ports of this machine, the network, the simulated one. */
export function ConnectPanel() {
  const words = useWords(linkTexts);
  const { list } = usePorts();
  const open = useOpenLink();
  const [network, setNetwork] = useState(false);
  const demo = useProgram((state) => state.program?.demo === true);
  const simulated = (
    <li key="simulated">
      <Button kind={demo ? "main" : "plain"} onClick={() => open({ kind: "simulated" })}>
        {words.simulated}
      </Button>
      <small>{words.simulatedAbout}</small>
    </li>
  );
  return (
    <section className="connect" aria-labelledby="connect-title">
      <h2 id="connect-title">{words.connectTitle}</h2>
      <p className="why soft">{words.connectWhy}</p>
      <ul>
        {demo && simulated}
        {list?.ports.map((port) => (
          <PortRow key={port.path} port={port} />
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
            <NetworkForm />
          </li>
        )}
        {!demo && simulated}
      </ul>
    </section>
  );
}
