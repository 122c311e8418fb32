import { useEffect } from "react";
import { useProgram } from "../../state/CoreContext.ts";
import { useRoute } from "../../state/routeStore.ts";
import { ThemeContext, useChosenTheme } from "../../ui/theme/useTheme.ts";
import { SpeechContext } from "../../words/SpeechContext.tsx";
import { useChosenSpeech } from "../../words/useChosenSpeech.ts";
import { Banners } from "./Banners.tsx";
import { Gate } from "./Gate.tsx";
import { NavRail } from "./NavRail.tsx";
import { Screen } from "./Screen.tsx";
import { Toasts } from "./Toasts.tsx";
import { UndoFiling } from "./UndoFiling.tsx";
import "../../ui/theme/base.css";
import "./shell.css";

/** The house around the screens: places, banners, the screen, short words. */
export function App() {
  const settings = useProgram((state) => state.settings);
  const timeZone = useProgram((state) => state.works?.timeZone);
  const theme = useChosenTheme(settings.theme);
  const speech = useChosenSpeech(settings.language, timeZone);
  const route = useRoute();
  useEffect(() => {
    document.documentElement.lang = speech.language;
  }, [speech]);
  return (
    <ThemeContext value={theme}>
      <SpeechContext value={speech}>
        <div className="house">
          <NavRail place={route.place} />
          <div className="page">
            <Banners />
            <main id="content" tabIndex={-1}>
              <Gate>
                <Screen route={route} />
              </Gate>
            </main>
          </div>
          <div className="toasts">
            <UndoFiling />
            <Toasts />
          </div>
        </div>
      </SpeechContext>
    </ThemeContext>
  );
}
