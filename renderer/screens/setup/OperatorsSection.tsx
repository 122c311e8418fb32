import { useState } from "react";
import type { OperatorView } from "../../../app/contract/recordViews.ts";
import { roleTexts } from "../../../app/words/recordTexts.ts";
import { useList } from "../../state/useList.ts";
import { useRolesCount } from "../../state/useRolesCount.ts";
import { Button } from "../../ui/Button.tsx";
import { commonTexts } from "../../words/commonTexts.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { HideName } from "../people/HideName.tsx";
import { OperatorForm } from "../people/OperatorForm.tsx";
import { peopleTexts } from "../people/peopleTexts.ts";
import { SetPin } from "../people/SetPin.tsx";
import { setupTexts } from "./texts.ts";

type Open =
  | { readonly what: "form"; readonly of: OperatorView | undefined }
  | { readonly what: "pin" | "hide"; readonly of: OperatorView };

/** Who works here, who may do what, and what is known of them. */
export function OperatorsSection() {
  const words = useWords(setupTexts);
  const about = useWords(peopleTexts);
  const operators = useList("operators").rows ?? [];
  const rolesCount = useRolesCount();
  const [open, setOpen] = useState<Open>();
  const close = () => setOpen(undefined);
  return (
    <section className="sheet" aria-labelledby="operators-title">
      <h2 id="operators-title">{words.operators}</h2>
      <p className="small soft">{words.operatorsWhy}</p>
      {operators.length > 0 && (
        <ul className="plain-list">
          {operators.map((operator) => (
            <OneOperator key={operator.operatorId} operator={operator} pins={rolesCount} onOpen={setOpen} />
          ))}
        </ul>
      )}
      <div className="row">
        <Button icon="add" onClick={() => setOpen({ what: "form", of: undefined })}>
          {words.addOperator}
        </Button>
      </div>
      <p className="small">{rolesCount ? about.rolesOn : about.rolesOff}</p>
      <p className="small soft">{about.honest}</p>
      {open?.what === "form" && (
        <OperatorForm
          operator={open.of}
          firstKeeper={!rolesCount}
          onHide={() => setOpen(open.of && { what: "hide", of: open.of })}
          onClose={close}
        />
      )}
      {open?.what === "pin" && <SetPin person={open.of} onClose={close} />}
      {open?.what === "hide" && <HideName person={open.of} onClose={close} />}
    </section>
  );
}

function OneOperator({
  operator,
  pins,
  onOpen,
}: {
  readonly operator: OperatorView;
  readonly pins: boolean;
  readonly onOpen: (open: Open) => void;
}) {
  const about = useWords(peopleTexts);
  const common = useWords(commonTexts);
  const roleWords = useWords(roleTexts);
  const { name, fullName, role, state, hasPin } = operator;
  const pin = hasPin ? about.pinChange : about.pinSet;
  const facts = [
    roleWords[role],
    hasPin ? about.hasPin : undefined,
    fullName === undefined ? about.noName : undefined,
    state === "retired" ? common.retired : undefined,
  ];
  return (
    <li className="row">
      <b>{name}</b>
      <small>{facts.filter((fact) => fact !== undefined).join(" · ")}</small>
      <Button
        kind="quiet"
        aria-label={`${common.edit}: ${name}`}
        onClick={() => onOpen({ what: "form", of: operator })}
      >
        {common.edit}
      </Button>
      {pins && fullName !== undefined && state === "inUse" && (
        <Button kind="quiet" aria-label={`${pin}: ${name}`} onClick={() => onOpen({ what: "pin", of: operator })}>
          {pin}
        </Button>
      )}
    </li>
  );
}
