import { useProgram } from "../../state/CoreContext.ts";
import { hrefOf } from "../../state/routeStore.ts";
import { Banner } from "../../ui/feedback/Banner.tsx";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { backupTexts } from "../setup/backupTexts.ts";

/** There ought to be a copy of the records by now. */
export function BackupBanner() {
  const speech = useSpeech();
  const words = useWords(backupTexts);
  const backup = useProgram((state) => state.backup);
  if (backup?.late === undefined || backup.late === null) return null;
  const late = backup.lastAtMs === undefined ? words.bannerNever : words.bannerLate(speech.date(backup.lastAtMs));
  return (
    <Banner act={<a href={hrefOf({ place: "setup" })}>{words.toSetup}</a>}>
      {backup.late === "noFolder" ? words.bannerNone : [late, backup.problem].filter(Boolean).join(" ")}
    </Banner>
  );
}
