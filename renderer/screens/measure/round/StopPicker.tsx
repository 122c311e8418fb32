import type { RoundView, StopView } from "../../../../app/contract/roundViews.ts";
import { Picker } from "../../../ui/Picker.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { roundLeadTexts } from "./texts.ts";

/** All stops of the round in hand, in walking order, each with what became of it. */
export function StopPicker({
  round,
  chosen,
  onChoose,
  onClose,
}: {
  readonly round: RoundView;
  readonly chosen: string | undefined;
  /** Undefined: the round is put away. */
  readonly onChoose: (stop: StopView | undefined) => void;
  readonly onClose: () => void;
}) {
  const words = useWords(roundLeadTexts);
  const standing = (stop: StopView) => {
    if (stop.done != null) return words.stateDone;
    if (stop.passed == null) return "";
    return `${stop.passed.as === "later" ? words.stateLater : words.stateLeftOut}: ${stop.passed.why}`;
  };
  return (
    <Picker
      title={words.chooseStop}
      choices={round.stops
        .filter((stop) => !stop.retired)
        .map((stop) => ({
          id: stop.spindleId,
          name: stop.name,
          about: [stop.taper, stop.area, standing(stop)].filter((part) => part !== "").join(" · "),
        }))}
      chosen={chosen}
      none={words.putAway}
      onChoose={(id) => onChoose(round.stops.find((one) => one.spindleId === id))}
      onClose={onClose}
    />
  );
}
