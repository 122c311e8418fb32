import type { LineView } from "../../../app/contract/linkViews.ts";
import type { ForceUnit } from "../../../app/quantity/forceUnits.ts";
import { rejectTexts } from "../../../app/words/recordTexts.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { setupTexts } from "./texts.ts";
import { visibleLine } from "./visibleLine.ts";

/** Raw lines beside what was read of them, and why not where nothing was. */
export function LineTable({ lines, unit }: { readonly lines: readonly LineView[]; readonly unit: ForceUnit }) {
  const speech = useSpeech();
  const words = useWords(setupTexts);
  const rejects = useWords(rejectTexts);
  if (lines.length === 0) return <p className="soft">{words.noLines}</p>;
  const read = ({ forceN, state, rejected }: LineView) => {
    if (rejected !== undefined) return words.notRead(rejects[rejected]);
    if (state === "overload") return words.overload;
    if (forceN === undefined) return "–";
    const value = speech.force(forceN, unit);
    return state === "held" ? words.held(value) : value;
  };
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls must be reached by keyboard (axe: scrollable-region-focusable)
    <section className="lines" tabIndex={0} aria-label={words.colRaw}>
      <table>
        <thead>
          <tr>
            <th scope="col">{words.colRaw}</th>
            <th scope="col">{words.colRead}</th>
          </tr>
        </thead>
        <tbody>
          {lines.map((line, i) => (
            // Lines have no names of their own and never change places.
            // biome-ignore lint/suspicious/noArrayIndexKey: see above
            <tr key={i}>
              <td>
                <code>{visibleLine(line.raw)}</code>
              </td>
              <td className={line.rejected === undefined ? undefined : "bad"}>{read(line)}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}
