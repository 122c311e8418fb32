import { useState } from "react";
import type { FactorView } from "../../../../app/contract/proofViews.ts";
import { Button } from "../../../ui/Button.tsx";
import { DateField } from "../../../ui/field/DateField.tsx";
import { commonTexts } from "../../../words/commonTexts.ts";
import { useSpeech, useWords } from "../../../words/SpeechContext.tsx";
import { factorTexts } from "./factorTexts.ts";

/** The scale with its uncertainty, run by run, and filing it. */
export function FactorResult({
  view,
  onFile,
}: {
  readonly view: FactorView;
  readonly onFile: (dueOn: string) => void;
}) {
  const speech = useSpeech();
  const words = useWords(factorTexts);
  const common = useWords(commonTexts);
  const [dueOn, setDueOn] = useState("");
  const { factor, filed, change } = view;
  const percent = (share: number, sign = false) => `${sign && share > 0 ? "+" : ""}${speech.number(100 * share, 2)} %`;
  if (factor === undefined) return null;
  return (
    <section className="stack" aria-label={words.scale}>
      <p className="factor" role="status">
        {words.is(speech.number(factor.scale, 5), speech.number(factor.expanded, 5), String(factor.runs))}
      </p>
      {change != null && (
        <p className={change.off ? "off" : undefined}>
          {words[change.off ? "isOff" : "agrees"](
            percent(change.relative, true),
            percent(change.expanded),
            speech.number(change.scale, 5),
          )}
        </p>
      )}
      <div className="sideways">
        <table>
          <thead>
            <tr>
              <th scope="col">{words.run}</th>
              <th scope="col" className="num">
                {words.scale}
              </th>
            </tr>
          </thead>
          <tbody>
            {factor.byRun.map(({ run, scale }) => (
              <tr key={run}>
                <th scope="row">{run}</th>
                <td className="num">{speech.number(scale, 5)}</td>
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      {filed == null ? (
        <div className="fields">
          <DateField label={words.dueOn} hint={common.optional} value={dueOn} onText={setDueOn} />
          <div className="row">
            <Button kind="main" onClick={() => onFile(dueOn)}>
              {words.file}
            </Button>
          </div>
        </div>
      ) : (
        <p role="status">{words.filed(String(filed.adapter.version))}</p>
      )}
    </section>
  );
}
