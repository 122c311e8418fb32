import type { RoundView } from "../../../app/contract/roundViews.ts";
import { useList } from "../../state/useList.ts";
import { Picker } from "../../ui/Picker.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { roundsTexts } from "./texts.ts";

/** One more spindle for a round, due or not; it is put where the way is shortest. */
export function AddSpindle({
  round,
  onAdd,
  onClose,
}: {
  readonly round: RoundView;
  readonly onAdd: (spindleId: string) => void;
  readonly onClose: () => void;
}) {
  const words = useWords(roundsTexts);
  const spindles = useList("spindles").rows ?? [];
  const there = new Set(round.stops.map((stop) => stop.spindleId));
  const choices = spindles
    .filter(({ spindle }) => spindle.state === "inUse" && !there.has(spindle.spindleId))
    .map(({ spindle }) => ({
      id: spindle.spindleId,
      name: spindle.name,
      about: [spindle.taper, spindle.machine, spindle.area].filter(Boolean).join(" · "),
    }));
  return (
    <Picker
      title={words.addTitle}
      choices={choices}
      chosen={undefined}
      onChoose={(id) => id !== undefined && onAdd(id)}
      onClose={onClose}
      empty={<p>{words.noMoreSpindles}</p>}
    />
  );
}
