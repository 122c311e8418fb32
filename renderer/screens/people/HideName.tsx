import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { peopleTexts } from "./peopleTexts.ts";

/** Takes a name out of the data file; what was filed stays. */
export function HideName({ person, onClose }: { readonly person: OperatorView; readonly onClose: () => void }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(peopleTexts);
  const common = useWords(commonTexts);
  const hide = async (how: "initials" | "erase") => {
    const { operatorId } = person;
    if ((await report(core.client.call("people.hide", { operatorId, how }))) !== undefined) onClose();
  };
  return (
    <Dialog
      title={words.hideTitle(person.fullName ?? person.name)}
      onClose={onClose}
      acts={
        <>
          <Button onClick={() => hide("initials")}>{words.toInitials(person.initials ?? "")}</Button>
          <Button onClick={() => hide("erase")}>{words.erase}</Button>
          <Button kind="main" onClick={onClose}>
            {common.cancel}
          </Button>
        </>
      }
    >
      <p className="why">{words.hideWhy}</p>
    </Dialog>
  );
}
