import { useState } from "react";
import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { Problem } from "../../ui/feedback/Problem.tsx";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindleTexts } from "./texts.ts";

/** A stop is released by name, with reason, and on the ground of a later check. */
export function ReleaseStop({
  page,
  unit,
  onDone,
  onClose,
}: {
  readonly page: SpindlePage;
  readonly unit: ForceUnit;
  readonly onDone: () => void;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const common = useWords(commonTexts);
  const verdictWords = useWords(verdictTexts);
  const operators = useList("operators").rows ?? [];
  const since = page.stop?.sinceMs ?? 0;
  const later = page.checks.filter(
    (check) => check.measuredAtMs > since && !check.voided && check.checkId !== page.stop?.checkId,
  );
  const [checkId, setCheckId] = useState(later[0]?.checkId ?? "");
  const [operatorId, setOperatorId] = useState("");
  const [reason, setReason] = useState("");
  const [workOrder, setWorkOrder] = useState("");
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();
  const reasonShort = reason.trim().length < 3;
  const release = async () => {
    setTried(true);
    if (checkId === "" || operatorId === "" || reasonShort) return;
    const answer = await core.client.call("stop.release", {
      spindleId: page.row.spindle.spindleId,
      checkId,
      operatorId,
      reason: reason.trim(),
      ...(workOrder.trim() === "" ? {} : { workOrder: workOrder.trim() }),
    });
    if (answer.ok) onDone();
    else setRefused(errorWords(answer.error, speech));
  };
  return (
    <Dialog
      title={words.releaseTitle}
      onClose={onClose}
      onSubmit={release}
      acts={
        <>
          {later.length > 0 && (
            <Button kind="main" type="submit">
              {words.release}
            </Button>
          )}
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <p className="why">{words.releaseWhy}</p>
      {refused !== undefined && <Problem>{refused}</Problem>}
      {later.length === 0 ? (
        <Problem>{words.releaseNeedsCheck}</Problem>
      ) : (
        <>
          <SelectField
            label={words.releaseCheck}
            value={checkId}
            options={later.map((check) => ({
              value: check.checkId,
              label: `${speech.date(check.measuredAtMs)} · ${check.valueN === undefined ? "" : speech.force(check.valueN, unit)} · ${verdictWords[check.verdict]}`,
            }))}
            onChoose={setCheckId}
          />
          <SelectField
            label={words.who}
            value={operatorId}
            options={[
              { value: "", label: "–" },
              ...operators.filter((o) => o.state === "inUse").map((o) => ({ value: o.operatorId, label: o.name })),
            ]}
            onChoose={setOperatorId}
            error={tried && operatorId === "" ? words.whoNeeded : undefined}
          />
          <NoteField
            label={common.reason}
            hint={common.reasonHint}
            value={reason}
            onText={setReason}
            error={tried && reasonShort ? common.reasonNeeded : undefined}
          />
          <TextField
            label={words.workOrder}
            hint={common.optional}
            value={workOrder}
            onText={setWorkOrder}
            maxLength={80}
          />
        </>
      )}
    </Dialog>
  );
}
