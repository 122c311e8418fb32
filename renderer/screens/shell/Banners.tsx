import { useCore, useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { Button } from "../../ui/Button.tsx";
import { Banner } from "../../ui/feedback/Banner.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { TourDoor } from "../tour/TourDoor.tsx";
import { BackupBanner } from "./BackupBanner.tsx";
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
  const damaged = useProgram((state) => state.program?.damaged === true);
  const leave = async () => {
    if ((await report(core.client.call("program.leaveDemo", {}))) !== undefined) core.loadAnew();
  };
  return (
    <>
      {connection === "lost" && <Banner loud>{words.lost}</Banner>}
      {readOnly !== undefined && readOnly !== null && (
        <Banner loud act={damaged && <a href={hrefOf({ place: "records" })}>{words.saveWhatStands}</a>}>
          {words.readOnly(readOnly)}
        </Banner>
      )}
      <BackupBanner />
      {demo && (
        <Banner
          act={
            <span className="row">
              <TourDoor />
              <Button kind="quiet" onClick={leave}>
                {words.leaveDemo}
              </Button>
            </span>
          }
        >
          {words.demoHere}
        </Banner>
      )}
    </>
  );
}
