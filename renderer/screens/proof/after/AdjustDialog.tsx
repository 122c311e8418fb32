import { useCore } from "../../../state/CoreContext.ts";
import { ReasonDialog } from "../../../ui/ReasonDialog.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { useReport } from "../../shell/useReport.ts";
import { fileTexts } from "../result/fileTexts.ts";

/** What was done to a gauge; its curve is void from then on. */
export function AdjustDialog({
  gaugeId,
  asFoundProofId,
  onClose,
}: {
  readonly gaugeId: string;
  /** The proof that showed it was needed. */
  readonly asFoundProofId: string | undefined;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(fileTexts);
  const save = async (what: string) => {
    const saved = await report(
      core.client.call("adjustments.save", {
        gaugeId,
        what,
        ...(asFoundProofId === undefined ? {} : { asFoundProofId }),
      }),
    );
    if (saved !== undefined) onClose();
  };
  return (
    <ReasonDialog title={words.adjust} label={words.adjustWhat} act={words.adjust} onReason={save} onClose={onClose}>
      {words.adjustWhy}
    </ReasonDialog>
  );
}
