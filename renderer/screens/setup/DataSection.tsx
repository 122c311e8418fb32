import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { PlaceList } from "./PlaceList.tsx";
import { setupTexts } from "./texts.ts";

/** Where everything is kept, and the way to the demo. */
export function DataSection() {
  const core = useCore();
  const report = useReport();
  const words = useWords(setupTexts);
  const program = useProgram((state) => state.program);
  if (program === undefined) return null;
  const openDemo = async () => {
    if ((await report(core.client.call("program.openDemo", {}))) !== undefined) core.loadAnew();
  };
  return (
    <section className="sheet" aria-labelledby="data-title">
      <h2 id="data-title">{words.data}</h2>
      <PlaceList />
      <dl>
        <dt>{words.version}</dt>
        <dd>{`Holdfast ${program.version}`}</dd>
      </dl>
      {!program.demo && (
        <div className="row">
          <Button onClick={openDemo}>{words.openDemo}</Button>
          <small>{words.openDemoWhy}</small>
        </div>
      )}
    </section>
  );
}
