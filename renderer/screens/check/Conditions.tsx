import type { CheckPage } from "../../../app/contract/recordViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { checkReasonTexts, ruleTexts } from "../../../app/words/recordTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { spindleTexts } from "../spindle/texts.ts";
import { useToolNames } from "../spindle/useToolNames.ts";
import { checkTexts } from "./texts.ts";

/** Everything that led to the verdict, as it stood that day. */
export function Conditions({ page, unit }: { readonly page: CheckPage; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(checkTexts);
  const reasons = useWords(checkReasonTexts);
  const rules = useWords(ruleTexts);
  const limitWords = useWords(spindleTexts);
  const tools = useToolNames();
  const { check } = page;
  const { limits } = check;
  const limit = (name: string, forceN: number | undefined) =>
    forceN === undefined ? undefined : `${name} ${speech.force(forceN, unit)}`;
  const limitText = [
    limit(limitWords.minimum, limits.minimumN),
    limit(limitWords.warning, limits.warningN),
    limit(limitWords.nominal, limits.nominalN),
    limit(limitWords.maximum, limits.maximumN),
  ].filter((part) => part !== undefined);
  const adapter = tools.adapter(check.adapterId);
  const lines: readonly (readonly [string, string | null | undefined])[] = [
    [words.reason, reasons[check.reason]],
    [words.spindleWas, check.spindleWarm === null ? undefined : check.spindleWarm ? words.warm : words.cold],
    [words.temperature, check.temperatureC === null ? undefined : `${speech.number(check.temperatureC, 1)} °C`],
    [words.counter, check.counter === null ? undefined : speech.number(check.counter)],
    [words.gauge, tools.gauge(check.gaugeId)],
    [
      words.adapter,
      adapter &&
        words.adapterScale(
          adapter,
          speech.number(check.corrections.adapterScale, 4),
          String(check.corrections.adapterVersion ?? "–"),
        ),
    ],
    [words.operator, tools.operator(check.operatorId)],
    [words.limits, limitText.length === 0 ? undefined : limitText.join(" · ")],
    [words.rule, rules[check.rule.rule]],
    [words.workOrder, check.workOrder],
    [words.note, check.note],
    [words.source, words[check.source]],
    [
      words.importedFrom,
      check.imported && words.importedRow(speech.number(check.imported.row), check.imported.fileHash.slice(0, 16)),
    ],
    [words.rawLine, check.rawLine],
    [words.program, check.programVersion],
    [words.filedAs, `${page.origin.slice(0, 8)} · ${page.seq} · ${page.hash.slice(0, 16)}…`],
  ];
  return (
    <section className="sheet tall">
      <h2>{words.conditions}</h2>
      <dl>
        {lines
          .filter(([, value]) => value !== undefined && value !== null && value !== "")
          .map(([name, value]) => (
            <div key={name} className="pair">
              <dt>{name}</dt>
              <dd>{value}</dd>
            </div>
          ))}
      </dl>
      {check.clockDoubtful && <p className="small">{words.clockDoubtful}</p>}
    </section>
  );
}
