import { deadWeightForce } from "../../../../app/proof/reference/deadWeightForce.ts";
import { siteGravity } from "../../../../app/proof/reference/siteGravity.ts";
import { Button } from "../../../ui/Button.tsx";
import { Choices } from "../../../ui/field/Choices.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { GravityFields } from "./GravityFields.tsx";
import type { ReferenceFields } from "./ReferenceFields.ts";
import { usualWeight, type WeightDraft } from "./referenceDraft.ts";
import { referenceOf } from "./referenceOf.ts";
import { referenceTexts } from "./referenceTexts.ts";

/** A rig of dead weights: which kind of mass, each weight as its certificate has it, and where it stands. */
export function WeightFields({ draft, unit, errorAt, onDraft }: ReferenceFields) {
  const speech = useSpeech();
  const words = useWords(referenceTexts);
  const { weights } = draft;
  const change = (i: number, part: Partial<WeightDraft>) =>
    onDraft({ weights: weights.with(i, { ...weights[i]!, ...part }) });
  const cell = (name: keyof WeightDraft, i: number) => ({
    label: words[name],
    value: weights[i]![name],
    onText: (text: string) => change(i, { [name]: text }),
    error: errorAt(`${name}${i}`),
    ...(name === "label" ? { maxLength: 20 } : { inputMode: "decimal" as const }),
  });
  const forceN = wholeStack();
  return (
    <>
      <Choices
        label={words.massKind}
        value={draft.massKind}
        options={(["conventional", "true"] as const).map((value) => ({ value, label: words[value] }))}
        onChoose={(massKind) => onDraft({ massKind })}
      />
      <fieldset className="group">
        <legend>{words.weightList}</legend>
        <ol className="weights">
          {weights.map((weight, i) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a weight is its place in the stack; its label is being typed
            <li key={i}>
              <TextField {...cell("label", i)} />
              <TextField {...cell("mass", i)} />
              <TextField {...cell("massU", i)} />
              <TextField {...cell("density", i)} />
              <TextField {...cell("densityU", i)} />
              <Button
                kind="quiet"
                aria-label={words.removeWeight(weight.label)}
                disabled={weights.length === 1}
                onClick={() => onDraft({ weights: weights.toSpliced(i, 1) })}
              >
                {words.remove}
              </Button>
            </li>
          ))}
        </ol>
        <div>
          <Button
            onClick={() =>
              onDraft({
                // Weights of a set are mostly alike but for their label.
                weights: [...weights, { ...(weights.at(-1) ?? usualWeight), label: String(weights.length + 1) }],
              })
            }
          >
            {words.addWeight}
          </Button>
        </div>
      </fieldset>
      <GravityFields draft={draft} unit={unit} errorAt={errorAt} onDraft={onDraft} />
      {forceN !== undefined && <p className="why">{words.stackIs(speech.force(forceN, unit, 1))}</p>}
    </>
  );

  /** Of all weights in air of 1.2 kg/m³; undefined while a field is not yet what it asks for. */
  function wholeStack(): number | undefined {
    const { reference, faults } = referenceOf(draft, unit);
    const rig = reference.weights;
    if (rig === undefined || faults.size > 0) return undefined;
    const gravity =
      rig.gravity.from === "measured" ? rig.gravity : siteGravity(rig.gravity.latitudeDeg, rig.gravity.heightM);
    return deadWeightForce(rig.weights, { gravity, airDensityKgM3: 1.2, airDensityStandardKgM3: 0 }).forceN;
  }
}
