import { useState } from "react";
import type { DockingView, RoundView } from "../../../app/contract/roundViews.ts";
import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { dockTexts } from "./texts.ts";
import { useReading } from "./useReading.tsx";

const BOXES = [0, 1, 2, 3, 4] as const;

/** The boxes of the sheet, typed in. */
export function SheetForm({
  round,
  gaugeId,
  onRead,
}: {
  readonly round: RoundView;
  readonly gaugeId: string;
  readonly onRead: (view: DockingView) => void;
}) {
  const core = useCore();
  const { busy, line, take } = useReading(onRead);
  const words = useWords(dockTexts);
  const unit = useProgram((state) => state.works?.unitShown ?? "kN");
  const [texts, setTexts] = useState<Readonly<Record<string, readonly string[]>>>({});
  const put = (spindleId: string, box: number, text: string) => {
    const row = BOXES.map((k) => (k === box ? text : (texts[spindleId]?.[k] ?? "")));
    setTexts({ ...texts, [spindleId]: row });
  };
  const use = () => {
    const values = Object.entries(texts)
      .map(([spindleId, row]) => ({ spindleId, texts: row.filter((t) => t.trim() !== "") }))
      .filter((v) => v.texts.length > 0);
    const tool = gaugeId === "" ? {} : { gaugeId };
    return take(() => core.client.call("docking.type", { roundId: round.roundId, values, ...tool }));
  };
  return (
    <>
      <div className="sideways">
        <table className="typed">
          <tbody>
            {round.stops.map((stop) => (
              <tr key={stop.spindleId}>
                <th scope="row">
                  {stop.location} · {stop.name}
                </th>
                {BOXES.map((k) => (
                  <td key={k}>
                    <input
                      inputMode="decimal"
                      aria-label={`${stop.name}, ${words.value(k + 1)}`}
                      value={texts[stop.spindleId]?.[k] ?? ""}
                      onChange={(e) => put(stop.spindleId, k, e.target.value)}
                    />
                  </td>
                ))}
                <td>{unit}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <div className="row">
        <Button kind="main" busy={busy} onClick={use}>
          {words.useSheet}
        </Button>
      </div>
      {line}
    </>
  );
}
