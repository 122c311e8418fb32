import type { DockingView } from "../../../app/contract/roundViews.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { GroupChip } from "./GroupChip.tsx";
import type { Placed } from "./Placed.ts";
import { dockTexts } from "./texts.ts";
import { useMore } from "./useMore.tsx";

/** Readings that are filed nowhere; each is kept with the docking and can still be sent to a spindle. */
export function LeftOut({
  view,
  placed,
  onMove,
}: {
  readonly view: DockingView;
  readonly placed: Placed;
  readonly onMove: (group: number, stop: number | undefined) => void;
}) {
  const words = useWords(dockTexts);
  const left = placed.groups.flatMap((group, at) => (group.stop === undefined ? [{ group, at }] : []));
  const { shown, button } = useMore(left);
  return (
    <section
      className="sheet form"
      aria-labelledby="left-title"
      onDragOver={(e) => e.preventDefault()}
      onDrop={(e) => {
        e.preventDefault();
        const group = Number(e.dataTransfer.getData("text/plain"));
        if (placed.groups[group] !== undefined) onMove(group, undefined);
      }}
    >
      <h2 id="left-title">{words.leftTitle(left.flatMap(({ group }) => group.takes).length)}</h2>
      {left.length === 0 && <p className="soft">{words.leftNone}</p>}
      <div className="chips">
        {shown.map(({ group, at }) => (
          <GroupChip key={group.takes[0]} view={view} group={group} at={at} onMove={onMove} />
        ))}
      </div>
      {button}
    </section>
  );
}
