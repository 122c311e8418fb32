import type { Draft } from "../../../../app/contract/seriesViews.ts";
import { Button } from "../../../ui/Button.tsx";
import { Dialog } from "../../../ui/Dialog.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { roundLeadTexts } from "./texts.ts";

/** Another spindle's label was scanned while values stand unfiled: theirs or not is not for the program to guess. */
export function MovedDialog({
  draft,
  from,
  to,
  onTheirs,
  onDiscard,
  onClose,
}: {
  readonly draft: Draft;
  readonly from: string;
  readonly to: string;
  readonly onTheirs: () => void;
  readonly onDiscard: () => void;
  readonly onClose: () => void;
}) {
  const words = useWords(roundLeadTexts);
  const common = useWords(commonTexts);
  const n = draft.typed == null ? draft.cycles.filter((cycle) => cycle.dropped === undefined).length : 1;
  return (
    <Dialog
      title={words.movedTitle(n)}
      onClose={onClose}
      onSubmit={onTheirs}
      acts={
        <>
          <Button onClick={onClose}>{common.cancel}</Button>
          <Button onClick={onDiscard}>{words.discard(to)}</Button>
          <Button type="submit">{words.theyAre(to)}</Button>
        </>
      }
    >
      <p className="why">{words.movedWhy(n, from, to)}</p>
    </Dialog>
  );
}
