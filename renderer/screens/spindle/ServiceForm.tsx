import { useState } from "react";
import type { Input } from "../../../app/contract/methods.ts";
import { serviceTexts } from "../../../app/words/recordTexts.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Caution } from "../../ui/feedback/Caution.tsx";
import { Choices } from "../../ui/field/Choices.tsx";
import { DateField } from "../../ui/field/DateField.tsx";
import { NoteField } from "../../ui/field/NoteField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { SaveDialog } from "../../ui/SaveDialog.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { errorWords } from "../../words/errorWords.ts";
import { parseNumber } from "../../words/parseNumber.ts";
import { isPlainDate } from "../../words/plainDates.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { localToday } from "./localToday.ts";
import { spindleTexts } from "./texts.ts";

type Kind = Input<"services.save">["kind"];
const kinds: readonly Kind[] = [
  "lubricated",
  "gripper",
  "springs",
  "unitExchanged",
  "setting",
  "taperGround",
  "crash",
  "other",
];
/** After these the old level says nothing of the new one. */
const startsAnew: readonly Kind[] = ["gripper", "springs", "unitExchanged", "setting", "taperGround"];

/** Work on a spindle, put down where its history is read. */
export function ServiceForm({
  spindleId,
  onDone,
  onClose,
}: {
  readonly spindleId: string;
  readonly onDone: () => void;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const common = useWords(commonTexts);
  const kindWords = useWords(serviceTexts);
  const [kind, setKind] = useState<Kind>("lubricated");
  const [anew, setAnew] = useState<boolean>();
  const [at, setAt] = useState(localToday);
  const [parts, setParts] = useState("");
  const [counter, setCounter] = useState("");
  const [newUnit, setNewUnit] = useState("");
  const [note, setNote] = useState("");
  const [tried, setTried] = useState(false);
  const [refused, setRefused] = useState<string>();

  const newBaseline = anew ?? startsAnew.includes(kind);
  const dateWrong = !isPlainDate(at) || at > localToday();
  const count = parseNumber(counter);
  const counterWrong = count === "unreadable" || (count !== undefined && (!Number.isInteger(count) || count < 0));
  const save = async () => {
    setTried(true);
    if (dateWrong || counterWrong) return;
    const answer = await core.client.call("services.save", {
      spindleId,
      at,
      kind,
      newBaseline,
      ...(parts.trim() === "" ? {} : { parts: parts.trim() }),
      ...(typeof count === "number" ? { counter: count } : {}),
      ...(kind === "unitExchanged" && newUnit.trim() !== "" ? { newUnitSerial: newUnit.trim() } : {}),
      ...(note === "" ? {} : { note }),
    });
    if (answer.ok) onDone();
    else setRefused(errorWords(answer.error, speech));
  };
  return (
    <SaveDialog wide title={words.serviceTitle} onClose={onClose} onSave={save} refused={refused}>
      <Choices
        label={words.serviceKind}
        value={kind}
        options={kinds.map((value) => ({ value, label: kindWords[value] }))}
        onChoose={setKind}
      />
      <Caution title={words.cautionTitle}>{words.serviceCaution}</Caution>
      <div className="fields">
        <DateField
          label={words.serviceDate}
          value={at}
          onText={setAt}
          error={tried && dateWrong ? words.serviceDateWrong : undefined}
        />
        <TextField
          label={words.serviceCounter}
          hint={common.optional}
          inputMode="numeric"
          value={counter}
          onText={setCounter}
          error={tried && counterWrong ? common.noNumber : undefined}
        />
        <TextField label={words.serviceParts} hint={common.optional} value={parts} onText={setParts} maxLength={2000} />
        {kind === "unitExchanged" && (
          <TextField label={words.newUnit} value={newUnit} onText={setNewUnit} maxLength={80} />
        )}
      </div>
      <NoteField label={common.note} value={note} onText={setNote} />
      <Tick checked={newBaseline} onTick={setAnew}>
        {words.newBaseline}
      </Tick>
    </SaveDialog>
  );
}
