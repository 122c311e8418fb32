import { useState } from "react";
import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { Dialog } from "../../ui/Dialog.tsx";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { Tick } from "../../ui/field/Tick.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { roleTexts } from "../../words/records/recordTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { setupTexts } from "./texts.ts";

const roles = ["technician", "planner", "lab", "keeper"] as const;
type Role = (typeof roles)[number];
const isRole = (role: string): role is Role => (roles as readonly string[]).includes(role);

/** Who measures here. */
export function OperatorsSection() {
  const words = useWords(setupTexts);
  const common = useWords(commonTexts);
  const roleWords = useWords(roleTexts);
  const operators = useList("operators").rows ?? [];
  const [open, setOpen] = useState<OperatorView | "new">();
  return (
    <section className="sheet" aria-labelledby="operators-title">
      <h2 id="operators-title">{words.operators}</h2>
      <p className="small soft">{words.operatorsWhy}</p>
      {operators.length > 0 && (
        <ul className="plain-list">
          {operators.map((operator) => (
            <li key={operator.operatorId} className="row">
              <b>{operator.name}</b>
              <small>
                {isRole(operator.role) ? roleWords[operator.role] : operator.role}
                {operator.state === "retired" && ` · ${common.retired}`}
              </small>
              <Button kind="quiet" aria-label={`${common.edit}: ${operator.name}`} onClick={() => setOpen(operator)}>
                {common.edit}
              </Button>
            </li>
          ))}
        </ul>
      )}
      <div className="row">
        <Button onClick={() => setOpen("new")}>{words.addOperator}</Button>
      </div>
      {open !== undefined && (
        <OperatorForm operator={open === "new" ? undefined : open} onClose={() => setOpen(undefined)} />
      )}
    </section>
  );
}

function OperatorForm({
  operator,
  onClose,
}: {
  readonly operator: OperatorView | undefined;
  readonly onClose: () => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(setupTexts);
  const common = useWords(commonTexts);
  const roleWords = useWords(roleTexts);
  const [name, setName] = useState(operator?.name ?? "");
  const [role, setRole] = useState<Role>(
    operator !== undefined && isRole(operator.role) ? operator.role : "technician",
  );
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
      <SelectField
        label={words.role}
        value={role}
        options={roles.map((value) => ({ value, label: roleWords[value] }))}
        onChoose={setRole}
      />
      {operator !== undefined && (
        <Tick checked={retired} onTick={setRetired}>
          {words.retire}
        </Tick>
      )}
    </Dialog>
  );
}
