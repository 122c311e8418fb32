import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import type { Group } from "./Placed.ts";
import { dockTexts } from "./texts.ts";

/** More figures than this are never looked through in one line. */
const MOST_SHOWN = 12;

/** Readings that stay together: dragged, or sent elsewhere by the list beside them. */
export function GroupChip({
  view,
  group,
  at,
  onMove,
}: {
  readonly view: DockingView;
  readonly group: Group;
  readonly at: number;
  readonly onMove: (group: number, stop: number | undefined) => void;
}) {
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const first = view.takes[group.takes[0]!]!; // a group has a reading
  const figures = group.takes.slice(0, MOST_SHOWN).map((t) => view.takes[t]!.figure);
  if (group.takes.length > MOST_SHOWN) figures.push(`… (${speech.number(group.takes.length)})`);
  const fileable = group.takes.every((t) => view.takes[t]!.valueN != null);
  const sureness = group.confidence === "open" ? words.unclear : words[group.confidence];
  return (
    <fieldset
      aria-label={figures.join(", ")}
      className={`chip ${group.confidence}`}
      draggable={fileable}
      onDragStart={(e) => e.dataTransfer.setData("text/plain", String(at))}
      title={group.takes
        .slice(0, MOST_SHOWN)
        .map((t) => view.takes[t]!.raw)
        .join("\n")}
    >
      <span>
        <b>{figures.join(" · ")}</b>
        {group.factor !== 1 && ` × ${speech.number(group.factor, group.factor < 1 ? 4 : 2)}`}
        <small>
          {[
            ...(first.badDate ? [words.badDate(first.stamp ?? "")] : []),
            ...(first.atMs == null ? [] : [speech.dateTime(first.atMs)]),
            ...(group.stop === undefined ? [] : [sureness]),
          ].join(" · ")}
        </small>
      </span>
      {fileable && (
        <select
          aria-label={`${words.moveTo}: ${figures.join(", ")}`}
          value={group.stop ?? ""}
          onChange={(e) => onMove(at, e.target.value === "" ? undefined : Number(e.target.value))}
        >
          <option value="">{words.nowhere}</option>
          {view.stops.map((stop, s) => (
            <option key={stop.spindleId} value={s}>
              {stop.name}
            </option>
          ))}
        </select>
      )}
    </fieldset>
  );
}
