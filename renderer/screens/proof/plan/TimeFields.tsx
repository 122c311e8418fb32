import { TextField } from "../../../ui/field/TextField.tsx";
import { Tick } from "../../../ui/field/Tick.tsx";
import { useWords } from "../../../words/SpeechContext.tsx";
import type { PlanDraft } from "./planDraft.ts";
import { planTexts } from "./planTexts.ts";

/** Preloads, waiting and reading times, creep. */
export function TimeFields({
  draft,
  errorAt,
  onDraft,
}: {
  readonly draft: PlanDraft;
  readonly errorAt: (field: string) => string | undefined;
  readonly onDraft: (part: Partial<PlanDraft>) => void;
}) {
  const words = useWords(planTexts);
  const creepSaid = errorAt("creep");
  const field = (name: "preloads" | "dwell" | "read" | "rest") => ({
    value: draft[name],
    onText: (text: string) => onDraft({ [name]: text }),
    error: errorAt(name),
  });
  return (
    <>
      <div className="fields">
        <TextField label={words.preloads} hint={words.preloadsHint} inputMode="numeric" {...field("preloads")} />
        <TextField label={words.dwell} unit="s" inputMode="decimal" {...field("dwell")} />
        <TextField label={words.read} unit="s" inputMode="decimal" {...field("read")} />
        <TextField label={words.rest} unit="s" inputMode="decimal" {...field("rest")} />
      </div>
      <Tick checked={draft.creep} onTick={(creep) => onDraft({ creep })}>
        {words.creep}
      </Tick>
      {creepSaid !== undefined && (
        <p className="error" role="alert">
          {creepSaid}
        </p>
      )}
    </>
  );
}
