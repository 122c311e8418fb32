import { useState } from "react";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { DateField } from "../../ui/field/DateField.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { roundsTexts } from "./texts.ts";

/** Name, day and gauge of a new round; its order is found by the core. */
export function RoundForm({
  today,
  spindleIds,
  onClose,
  onMade,
}: {
  readonly today: string;
  readonly spindleIds: readonly string[];
  readonly onClose: () => void;
  readonly onMade: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const speech = useSpeech();
  const words = useWords(roundsTexts);
  const common = useWords(commonTexts);
  const gauges = (useList("gauges").rows ?? []).filter(({ gauge }) => gauge.state === "inUse");
  const [name, setName] = useState(words.nameFor(speech.plainDate(today)));
  const [on, setOn] = useState(today);
  const [gaugeId, setGaugeId] = useState("");
  const [busy, setBusy] = useState(false);
  const save = async () => {
    if (busy) return;
    setBusy(true);
    const made = await report(
      core.client.call("rounds.save", {
        name,
        on,
        made: "dueList",
        ...(gaugeId === "" ? {} : { gaugeId }),
        stops: spindleIds.map((spindleId) => ({ spindleId })),
      }),
    );
    setBusy(false);
    if (made !== undefined) onMade();
  };
  return (
    <Dialog
      title={words.formTitle}
      onClose={onClose}
      onSubmit={save}
      acts={
        <>
          <Button kind="main" type="submit" busy={busy}>
            {words.make(spindleIds.length)}
          </Button>
          <Button onClick={onClose}>{common.cancel}</Button>
        </>
      }
    >
      <TextField label={words.name} value={name} onText={setName} maxLength={120} />
      <DateField label={words.on} value={on} onText={setOn} />
      <SelectField
        label={words.gauge}
        value={gaugeId}
        options={[
          { value: "", label: words.anyGauge },
          ...gauges.map(({ gauge }) => ({ value: gauge.gaugeId, label: gauge.name })),
        ]}
        onChoose={setGaugeId}
      />
    </Dialog>
  );
}
