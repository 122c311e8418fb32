import type { ForceUnit } from "../../../../app/quantity/forceUnits.ts";
import { Button } from "../../../ui/Button.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { unitText } from "../../../words/Speech.ts";
import { useWords } from "../../../words/SpeechContext.tsx";
import { planTexts } from "./planTexts.ts";

/** The target loads, each a field of its own, so that what is wrong is said where it stands. */
export function LoadFields({
  loads,
  unit,
  errorAt,
  onLoads,
}: {
  readonly loads: readonly string[];
  readonly unit: ForceUnit;
  readonly errorAt: (field: string) => string | undefined;
  readonly onLoads: (loads: readonly string[]) => void;
}) {
  const words = useWords(planTexts);
  const all = errorAt("loads");
  return (
    <fieldset className="group">
      <legend>{words.loads}</legend>
      <small>{words.loadsHint}</small>
      {all !== undefined && (
        <p className="error" role="alert">
          {all}
        </p>
      )}
      <ol className="loads">
        {loads.map((load, i) => (
          // A load is its place in the order; moving one is typing another figure.
          // biome-ignore lint/suspicious/noArrayIndexKey: the place is what a field stands for
          <li key={i}>
            <TextField
              label={words.load(String(i + 1))}
              unit={unitText(unit)}
              inputMode="decimal"
              value={load}
              onText={(text) => onLoads(loads.with(i, text))}
              error={errorAt(`load${i}`)}
            />
            <Button
              kind="quiet"
              aria-label={words.removeLoad(String(i + 1))}
              onClick={() => onLoads(loads.toSpliced(i, 1))}
            >
              ✕
            </Button>
          </li>
        ))}
      </ol>
      <div>
        <Button onClick={() => onLoads([...loads, ""])}>{words.addLoad}</Button>
      </div>
    </fieldset>
  );
}
