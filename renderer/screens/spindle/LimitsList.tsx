import type { SpindlePage } from "../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { ruleTexts } from "../../../app/words/recordTexts.ts";
import { useProgram } from "../../state/CoreContext.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindleTexts } from "./texts.ts";

/** The figures the verdict rests on. */
export function LimitsList({ page: { row, due }, unit }: { readonly page: SpindlePage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(spindleTexts);
  const ruleWords = useWords(ruleTexts);
  const worksRule = useProgram((state) => state.works?.rule.rule);
  const { limits, limitsFrom, rule } = row.spindle;
  const force = (forceN: number | undefined) => (forceN === undefined ? undefined : speech.force(forceN, unit));
  const used = rule?.rule ?? worksRule;
  const dueOn = due == null ? undefined : speech.plainDate(due.dueOn);
  const lines: readonly (readonly [string, string | undefined])[] = [
    [words.maximum, force(limits.maximumN)],
    [words.nominal, force(limits.nominalN)],
    [words.warning, force(limits.warningN)],
    [words.minimum, force(limits.minimumN)],
    [words.from, limitsFrom],
    [words.baseline, force(row.baselineN)],
    [words.rule, used && ruleWords[used]],
    [words.due, dueOn !== undefined && due!.overdueDays > 0 ? words.overdue(dueOn) : dueOn],
  ];
  const given = lines.filter(([, value]) => value !== undefined && value !== "");
  return (
    <section>
      <h2>{words.limits}</h2>
      {Object.keys(limits).length === 0 && <p className="soft">{words.noLimits}</p>}
      <dl>
        {given.map(([name, value]) => (
          <div key={name} className="pair">
            <dt>{name}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
    </section>
  );
}
