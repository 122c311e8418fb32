import type { NameAnswer, NamedThing, UnknownName } from "../../../app/contract/importViews.ts";
import { useList } from "../../state/useList.ts";
import { Button } from "../../ui/Button.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { fieldTexts } from "./fieldTexts.ts";
import { questionTexts } from "./questionTexts.ts";

const SHOWN = 50;

type Choices = Readonly<Record<NamedThing, readonly { readonly id: string; readonly name: string }[]>>;

/** What each name of the file that the register does not know stands for. */
export function NameTable({
  names,
  onNames,
}: {
  readonly names: readonly UnknownName[];
  readonly onNames: (answers: NameAnswer[]) => void;
}) {
  const speech = useSpeech();
  const words = useWords(questionTexts);
  const fields = useWords(fieldTexts);
  const choices = useChoices();
  if (names.length === 0) return null;
  const answers = names.flatMap(({ thing, name, to }) => (to === undefined ? [] : [{ thing, name, to }]));
  const say = (one: UnknownName, to: string) => {
    const others = answers.filter((a) => a.thing !== one.thing || a.name !== one.name);
    onNames(to === "" ? others : [...others, { thing: one.thing, name: one.name, to }]);
  };
  const sayAll = (to: "create" | "leaveOut") => {
    const open = names.filter((n) => n.thing === "spindle" && n.to === undefined);
    onNames([...answers, ...open.map(({ thing, name }) => ({ thing, name, to }))]);
  };
  return (
    <section>
      <h3>{words.names}</h3>
      {names.some((n) => n.thing === "spindle" && n.to === undefined) && (
        <div className="row">
          <Button onClick={() => sayAll("create")}>{words.createAll}</Button>
          <Button onClick={() => sayAll("leaveOut")}>{words.leaveOutAll}</Button>
        </div>
      )}
      <table className="import-columns">
        <caption className="unseen">{words.names}</caption>
        <thead>
          <tr>
            <th scope="col">{words.nameColumn}</th>
            <th scope="col">{words.rowsColumn}</th>
            <th scope="col">{words.toColumn}</th>
          </tr>
        </thead>
        <tbody>
          {names.slice(0, SHOWN).map((one) => (
            <tr key={`${one.thing} ${one.name}`}>
              <th scope="row">
                {one.name} <span className="soft">{fields[one.thing]}</span>
              </th>
              <td>{speech.number(one.rows)}</td>
              <td>
                <select
                  aria-label={`${one.name}: ${words.toColumn}`}
                  value={one.to ?? ""}
                  onChange={(e) => say(one, e.target.value)}
                >
                  {one.thing === "spindle" ? (
                    <>
                      <option value="">{words.choose}</option>
                      <option value="create">{words.create}</option>
                      <option value="leaveOut">{words.leaveOutRows}</option>
                    </>
                  ) : (
                    <option value="">{words.leaveOutName}</option>
                  )}
                  {choices[one.thing].map(({ id, name }) => (
                    <option key={id} value={id}>
                      {name}
                    </option>
                  ))}
                </select>
              </td>
            </tr>
          ))}
        </tbody>
      </table>
      {names.length > SHOWN && <p className="soft">{words.moreNames(speech.number(names.length - SHOWN))}</p>}
    </section>
  );
}

function useChoices(): Choices {
  const spindles = useList("spindles").rows ?? [];
  const adapters = useList("adapters").rows ?? [];
  const gauges = useList("gauges").rows ?? [];
  const operators = useList("operators").rows ?? [];
  return {
    spindle: spindles.map(({ spindle }) => ({ id: spindle.spindleId, name: spindle.name })),
    adapter: adapters.map(({ adapter }) => ({ id: adapter.adapterId, name: adapter.name })),
    gauge: gauges.map(({ gauge }) => ({ id: gauge.gaugeId, name: gauge.name })),
    operator: operators.map(({ operatorId, name }) => ({ id: operatorId, name })),
  };
}
