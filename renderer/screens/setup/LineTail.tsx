import { useEffect, useState } from "react";
import type { LineView } from "../../../app/contract/linkViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Tick } from "../../ui/field/Tick.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { LineTable } from "./LineTable.tsx";
import { setupTexts } from "./texts.ts";

const EVERY_MS = 1_000;

/** The last lines of the stream, kept up while they are looked at. */
export function LineTail({ unit }: { readonly unit: ForceUnit }) {
  const core = useCore();
  const words = useWords(setupTexts);
  const [shown, setShown] = useState(false);
  const [lines, setLines] = useState<readonly LineView[]>([]);
  useEffect(() => {
    if (!shown) return;
    const ask = async () => {
      const answer = await core.client.call("link.tail", {});
      if (answer.ok) setLines(answer.value.lines);
    };
    ask();
    const timer = setInterval(ask, EVERY_MS);
    return () => clearInterval(timer);
  }, [core, shown]);
  return (
    <>
      <Tick checked={shown} onTick={setShown}>
        {words.showLines}
      </Tick>
      {shown && <LineTable lines={lines} unit={unit} />}
    </>
  );
}
