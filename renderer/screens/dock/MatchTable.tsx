import { useState } from "react";
import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useProgram } from "../../state/CoreContext.ts";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { GroupChip } from "./GroupChip.tsx";
import type { Placed } from "./Placed.ts";
import { dockTexts } from "./texts.ts";

/** Spindles in walking order, each with the readings that are to be filed for it. */
export function MatchTable({
  view,
  placed,
  onMove,
}: {
  readonly view: DockingView;
  readonly placed: Placed;
  readonly onMove: (group: number, stop: number | undefined) => void;
}) {
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const [over, setOver] = useState<number>();
  const meanOf = (stop: number) => {
    const values = placed.groups
      .filter((g) => g.stop === stop)
      .flatMap((g) => g.takes.map((t) => (view.takes[t]!.valueN ?? 0) * g.factor));
    return values.length === 0 ? undefined : values.reduce((a, b) => a + b, 0) / values.length;
  };
  return (
    <div className="sideways">
      <table>
        <thead>
          <tr>
            <th scope="col">{words.proposed}</th>
            <th scope="col">{words.spindle}</th>
            <th scope="col" className="num">
              {words.expected}
            </th>
            <th scope="col" className="num">
              {words.mean}
            </th>
          </tr>
        </thead>
        <tbody>
          {view.stops.map((stop, s) => {
            const mean = meanOf(s);
            return (
              <tr
                key={stop.spindleId}
                data-thing={stop.spindleId}
                className={over === s ? "over" : undefined}
                onDragOver={(e) => {
                  e.preventDefault();
                  setOver(s);
                }}
                onDragLeave={() => setOver(undefined)}
                onDrop={(e) => {
                  e.preventDefault();
                  setOver(undefined);
                  const group = Number(e.dataTransfer.getData("text/plain"));
                  if (Number.isInteger(group) && placed.groups[group] !== undefined) onMove(group, s);
                }}
              >
                <td>
                  {placed.groups.map((group, g) =>
                    group.stop === s ? (
                      <GroupChip key={group.takes[0]} view={view} group={group} at={g} onMove={onMove} />
                    ) : null,
                  )}
                  {mean === undefined && <span className="soft">{words.missing}</span>}
                </td>
                <th scope="row">
                  {stop.location != null && <span className="soft">{stop.location} · </span>}
                  {stop.name} <small>{stop.taper}</small>
                </th>
                <td className="num">{stop.expectedN == null ? "" : speech.force(stop.expectedN, unit)}</td>
                <td className="num">{mean === undefined ? "" : <b>{speech.force(mean, unit)}</b>}</td>
              </tr>
            );
          })}
        </tbody>
      </table>
    </div>
  );
}
