import { type FormEvent, useState } from "react";
import type { RunningProof } from "../../../../app/contract/proofViews.ts";
import type { ProofAct } from "../../../../app/proof/plan/proofActs.ts";
import { type ForceUnit, fromNewtons } from "../../../../app/quantity/forceUnits.ts";
import { parseForce } from "../../../../app/quantity/parseForce.ts";
import { Button } from "../../../ui/Button.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { figureText } from "../../../words/parseNumber.ts";
import { unitText } from "../../../words/Speech.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { leadTexts } from "./leadTexts.ts";
import "./typeForm.css";

type Typed = { readonly indication: string; readonly reference?: string };

/** Figures read off displays. A bare number is in the unit that stands beside the field. */
export function TypeForm({
  proof,
  act,
  unit,
  busy,
  onTake,
}: {
  readonly proof: RunningProof;
  readonly act: ProofAct;
  readonly unit: ForceUnit;
  readonly busy: boolean;
  readonly onTake: (typed: Typed) => void;
}) {
  const speech = useSpeech();
  const words = useWords(leadTexts);
  const targetN = act.kind === "read" ? act.targetN : 0;
  const asksReference = proof.referenceRead === "typed" && targetN > 0;
  const [indication, setIndication] = useState("");
  // Typed values mostly are what was asked for: only what differs has to be typed.
  const [reference, setReference] = useState(figureText(fromNewtons(targetN, unit), 8));
  const [tried, setTried] = useState(false);
  const whole = (text: string) => (parseForce(text).kind === "bare" ? `${text.trim()} ${unit}` : text);
  const means = (text: string) => {
    const force = parseForce(whole(text));
    return force.kind === "force" ? words.typeMeans(speech.force(force.forceN, unit, 1)) : words.typeHint;
  };
  const submit = (event: FormEvent) => {
    event.preventDefault();
    event.stopPropagation(); // inside a dialog there is a form around it
    setTried(true);
    if (parseForce(whole(indication)).kind !== "force") return;
    onTake({ indication: whole(indication), ...(asksReference ? { reference: whole(reference) } : {}) });
  };
  return (
    <form className="type-form" noValidate onSubmit={submit}>
      <TextField
        label={words.typeGauge}
        hint={means(indication)}
        unit={unitText(unit)}
        inputMode="decimal"
        autoFocus
        value={indication}
        maxLength={30}
        onText={setIndication}
        error={tried && parseForce(whole(indication)).kind !== "force" ? words.typeNone : undefined}
      />
      {asksReference && (
        <TextField
          label={words.typeReference}
          hint={means(reference)}
          unit={unitText(unit)}
          inputMode="decimal"
          value={reference}
          maxLength={30}
          onText={setReference}
        />
      )}
      <Button kind="main" type="submit" busy={busy}>
        {words.typeUse}
      </Button>
    </form>
  );
}
