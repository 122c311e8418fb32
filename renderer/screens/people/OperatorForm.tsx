import { useState } from "react";
import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { type Role, roles } from "../../../app/people/rights.ts";
import { roleTexts } from "../../../app/words/recordTexts.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { setupTexts } from "../setup/texts.ts";
import { useReport } from "../shell/useReport.ts";
import { peopleTexts } from "./peopleTexts.ts";

/** A person, new or known. */
export function OperatorForm({
  operator,
  firstKeeper,
  onHide,
  onClose,
}: {
  readonly operator: OperatorView | undefined;
  /** Nobody is keeper yet: what the role brings is said before it is given. */
  readonly firstKeeper: boolean;
  /** The name is to go. */
  readonly onHide: () => void;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(setupTexts);
  const about = useWords(peopleTexts);
  const common = useWords(commonTexts);
  const roleWords = useWords(roleTexts);
  const [name, setName] = useState(operator?.fullName ?? "");
  const [initials, setInitials] = useState(operator?.initials ?? "");
  const [role, setRole] = useState<Role>(operator?.role ?? "technician");
  const [retired, setRetired] = useState(operator?.state === "retired");
  const [tried, setTried] = useState(false);
  const save = async () => {
    setTried(true);
    if (name.trim() === "") return;
    const saved = await report(
      core.client.call("operators.save", {
        name: name.trim(),
        role,
        state: retired ? "retired" : "inUse",
        ...(initials.trim() === "" ? {} : { initials: initials.trim() }),
        ...(operator === undefined ? {} : { operatorId: operator.operatorId }),
      }),
    );
    if (saved !== undefined) onClose();
  };
  return (
    <Dialog
      title={operator === undefined ? words.addOperator : words.editOperator}
      onClose={onClose}
      onSubmit={save}
      acts={
        <>
          <Button kind="main" type="submit">
            {common.save}
          </Button>
          <Button onClick={onClose}>{common.cancel}</Button>
          {operator?.fullName !== undefined && (
            <Button kind="quiet" onClick={onHide}>
              {about.hide}
            </Button>
          )}
        </>
      }
    >
      <TextField
        label={words.operatorName}
        value={name}
        onText={setName}
        maxLength={120}
        error={tried && name.trim() === "" ? common.nameNeeded : undefined}
      />
      <TextField label={about.initials} hint={about.initialsHint} value={initials} onText={setInitials} maxLength={8} />
      <SelectField
        label={words.role}
        hint={about[`role.${role}`]}
        value={role}
        options={roles.map((value) => ({ value, label: roleWords[value] }))}
        onChoose={setRole}
      />
      {firstKeeper && role === "keeper" && <p className="small">{about.firstKeeper}</p>}
      {operator !== undefined && (
        <Tick checked={retired} onTick={setRetired}>
          {words.retire}
        </Tick>
      )}
    </Dialog>
  );
}
