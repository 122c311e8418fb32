import { useCore, useProgram } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Banner } from "../../ui/feedback/Banner.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { shellTexts } from "./texts.ts";
import { useReport } from "./useReport.ts";

/** What holds for every screen: the demo, a lost program, a data file that cannot be written. */
export function Banners() {
  const core = useCore();
  const report = useReport();
  const words = useWords(shellTexts);
  const connection = useProgram((state) => state.connection);
  const demo = useProgram((state) => state.program?.demo === true);
  const readOnly = useProgram((state) => state.program?.readOnly);
  const leave = async () => {
    if ((await report(core.client.call("program.leaveDemo", {}))) !== undefined) core.loadAnew();
  };
  return (
    <>
      {connection === "lost" && <Banner loud>{words.lost}</Banner>}
      {readOnly !== undefined && readOnly !== null && <Banner loud>{words.readOnly(readOnly)}</Banner>}
      {demo && (
        <Banner
          act={
            <Button kind="quiet" onClick={leave}>
              {words.leaveDemo}
            </Button>
          }
        >
          {words.demoHere}
        </Banner>
      )}
    </>
  );
}
