import { allRunRules, type RunRule } from "../../../../app/trend/control/runRules.ts";
import { SelectField } from "../../../ui/field/SelectField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import { type ChosenRules, type Preset, presetOf, presets } from "./chartOf.ts";
import { controlTexts } from "./controlTexts.ts";

const offered: readonly RunRule[] = [...allRunRules, "eightOneSide"];

/** The classical run rules, as a set or one by one. */
export function RulePicker({
  chosen,
  onChoose,
}: {
  readonly chosen: ChosenRules;
  readonly onChoose: (chosen: ChosenRules) => void;
}) {
  const words = useWords(controlTexts);
  const { rules, ranges } = chosen;
  const tick = (rule: RunRule, on: boolean) =>
    onChoose({ ranges, rules: on ? [...rules, rule] : rules.filter((one) => one !== rule) });
  const preset = presetOf(chosen);
  const sets: readonly (readonly [Preset, string])[] = [
    ["one", words.presetOne],
    ["zone", words.presetZone],
    ["all", words.presetAll],
    ...(preset === "own" ? [["own", words.presetOwn] as const] : []),
  ];
  return (
    <details>
      <summary>{words.rules}</summary>
      <SelectField
        label={words.preset}
        value={preset}
        options={sets.map(([value, label]) => ({ value, label }))}
        onChoose={(set) => set !== "own" && onChoose({ rules: presets[set], ranges: false })}
      />
      <fieldset className="rules">
        <legend className="unseen">{words.rules}</legend>
        {offered.map((rule) => (
          <Tick key={rule} checked={rules.includes(rule)} onTick={(on) => tick(rule, on)}>
            {words[rule]}
          </Tick>
        ))}
        <Tick checked={ranges} onTick={(on) => onChoose({ rules, ranges: on })}>
          {words.rangeAbove}
        </Tick>
      </fieldset>
    </details>
  );
}
