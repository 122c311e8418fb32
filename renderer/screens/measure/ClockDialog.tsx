import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { fileSeries } from "./acts.ts";
import { measureTexts } from "./texts.ts";

/** The clock stands before the last entry: asked about before anything is filed under a wrong date. */
export function ClockDialog({ message, onClose }: { readonly message: string; readonly onClose: () => void }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(measureTexts);
  const common = useWords(commonTexts);
  const goOn = async () => {
    onClose();
    const result = await fileSeries(core, true);
    if (result !== undefined) report(Promise.resolve(result));
  };
  return (
    <Dialog
      title={words.clockTitle}
      onClose={onClose}
      onSubmit={goOn}
      acts={
        <>
          <Button type="submit">{words.clockYes}</Button>
          <Button kind="main" onClick={onClose}>
            {common.cancel}
          </Button>
        </>
      }
    >
      <p className="why">{message}</p>
    </Dialog>
  );
}
