import { useEffect, useRef } from "react";
import type { CheckRow } from "../../../app/contract/recordViews.ts";
import type { DockingResult } from "../../../app/contract/roundViews.ts";
import { useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { VerdictWord } from "../../ui/verdict/VerdictWord.tsx";
import { forceUnitOf } from "../../words/Speech.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { dockTexts } from "./texts.ts";

const gravity: readonly CheckRow["verdict"][] = ["stop", "act", "cannotTell", "watch", "good"];

/** What was filed, the gravest verdict first: which spindles call for something is seen at once. */
export function Filed({ result, onAnother }: { readonly result: DockingResult; readonly onAnother: () => void }) {
  const speech = useSpeech();
  const words = useWords(dockTexts);
  const spindles = useList("spindles").rows;
  const unit = forceUnitOf(useProgram((state) => state.works?.unitShown ?? "kN"));
  const rows = [...result.rows].sort((a, b) => gravity.indexOf(a.verdict) - gravity.indexOf(b.verdict));
  const nameOf = (id: string) => spindles?.find((row) => row.spindle.spindleId === id)?.spindle.name ?? "";
  const title = useRef<HTMLHeadingElement>(null);
  useEffect(() => {
    // The press that filed is gone with its line: the eye and the keyboard go on here.
    scrollTo({ top: 0 });
    title.current?.focus({ preventScroll: true });
  }, []);
  return (
    <section className="sheet tall" aria-labelledby="filed-title">
      <div role="status">
        <h2 id="filed-title" tabIndex={-1} ref={title}>
          {words.filed(result.rows.length)}
        </h2>
      </div>
      {result.again && <p>{words.filedAgain}</p>}
      <table>
        <tbody>
          {rows.map(({ checkId, spindleId, verdict, valueN, expandedN }) => (
            <tr key={checkId}>
              <th scope="row">
                <a href={hrefOf({ place: "spindle", spindleId, checkId })}>{nameOf(spindleId)}</a>
              </th>
              <td>
                <VerdictWord verdict={verdict} />
              </td>
              <td className="num">{valueN == null ? "" : speech.forceWithin(valueN, expandedN ?? undefined, unit)}</td>
            </tr>
          ))}
        </tbody>
      </table>
      <div className="row after">
        <a className="button main" href={hrefOf({ place: "spindles" })}>
          <span>{words.toSpindles}</span>
        </a>
        <Button onClick={onAnother}>{words.another}</Button>
      </div>
    </section>
  );
}
