import { Button } from "../../../ui/Button.tsx";
import { TextField } from "../../../ui/field/TextField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { PlanDraft } from "./planDraft.ts";
import { planTexts } from "./planTexts.ts";

type Runs = PlanDraft["runs"];

/** The runs: a label, how far the gauge is turned, whether the loads are read on the way down too. */
export function RunFields({
  runs,
  errorAt,
  onRuns,
}: {
  readonly runs: Runs;
  readonly errorAt: (field: string) => string | undefined;
  readonly onRuns: (runs: Runs) => void;
}) {
  const words = useWords(planTexts);
  const all = errorAt("runs");
  const change = (i: number, part: Partial<Runs[number]>) => onRuns(runs.with(i, { ...runs[i]!, ...part }));
  const next = () => {
    const taken = new Set(runs.map(({ run }) => run));
    let n = runs.length + 1;
    while (taken.has(String(n))) n += 1;
    return { run: String(n), position: runs.at(-1)?.position ?? "0", falling: false };
  };
  return (
    <fieldset className="group">
      <legend>{words.runs}</legend>
      <small>{words.runsHint}</small>
      {all !== undefined && (
        <p className="error" role="alert">
          {all}
        </p>
      )}
      <ol className="runs">
        {runs.map(({ run, position, falling }, i) => (
          // biome-ignore lint/suspicious/noArrayIndexKey: a run is its place in the order; its label is being typed
          <li key={i} aria-label={words.runOf(run)}>
            <TextField
              label={words.run}
              value={run}
              onText={(text) => change(i, { run: text })}
              maxLength={20}
              error={errorAt(`run${i}`)}
            />
            <TextField
              label={words.position}
              inputMode="decimal"
              value={position}
              onText={(text) => change(i, { position: text })}
              error={errorAt(`position${i}`)}
            />
            <Tick checked={falling} onTick={(on) => change(i, { falling: on })}>
              {words.falling}
            </Tick>
            <Button kind="quiet" aria-label={words.removeRun(run)} onClick={() => onRuns(runs.toSpliced(i, 1))}>
              {words.remove}
            </Button>
          </li>
        ))}
      </ol>
      <div>
        <Button onClick={() => onRuns([...runs, next()])}>{words.addRun}</Button>
      </div>
    </fieldset>
  );
}
