import { lazy, Suspense, useEffect, useRef } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { useRoute } from "../../state/routeStore.ts";
import { ThemeContext, useChosenTheme } from "../../ui/theme/useTheme.ts";
import { useHeightAs } from "../../ui/useHeightAs.ts";
import { SpeechContext } from "../../words/SpeechContext.tsx";
import { useChosenSpeech } from "../../words/useChosenSpeech.ts";
import { useHelpKey } from "../help/useHelpKey.ts";
import { AskPeople } from "../people/AskPeople.tsx";
import { ScanAnywhere } from "../scan/ScanAnywhere.tsx";
import { Banners } from "./Banners.tsx";
import { Gate } from "./Gate.tsx";
import { NavRail } from "./NavRail.tsx";
import { Screen } from "./Screen.tsx";
import { Toasts } from "./Toasts.tsx";
import { UndoFiling } from "./UndoFiling.tsx";
import { useArrival } from "./useArrival.ts";
import "../../ui/theme/base.css";
import "./shell.css";

const Tour = lazy(async () => ({ default: (await import("../tour/Tour.tsx")).Tour }));

/** The house around the screens: places, banners, the screen, short words. */
export function App() {
  const settings = useProgram((state) => state.settings);
  const timeZone = useProgram((state) => state.works?.timeZone);
  const theme = useChosenTheme(settings.theme);
  const speech = useChosenSpeech(settings.language, timeZone);
  const route = useRoute();
  const touring = useProgram((state) => state.program?.demo === true && state.settings.tour?.state === "running");
  const toasts = useRef<HTMLDivElement>(null);
  useHeightAs("--toasts-height", toasts);
  useHelpKey(route);
  useArrival(route);
  useEffect(() => {
    document.documentElement.lang = speech.language;
  }, [speech]);
  return (
    <ThemeContext value={theme}>
      <SpeechContext value={speech}>
        <div className="house">
          <NavRail route={route} />
          <div className="page">
            <Banners />
            <main id="content" tabIndex={-1}>
              <Gate>
                <Screen route={route} />
              </Gate>
            </main>
          </div>
          <ScanAnywhere place={route.place} />
          <AskPeople />
          {touring && (
            <Suspense fallback={null}>
              <Tour route={route} />
            </Suspense>
          )}
          <div className="toasts" ref={toasts}>
            <UndoFiling />
            <Toasts />
          </div>
        </div>
      </SpeechContext>
    </ThemeContext>
  );
}
