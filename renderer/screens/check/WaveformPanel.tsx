import { useEffect, useState } from "react";
import type { CheckPage, WaveformView } from "../../../app/contract/recordViews.ts";
import { type ForceUnit, newtonsPerUnit } from "../../../app/quantity/forceUnits.ts";
import { coloursOf } from "../../chart/colours.ts";
import { useCanvas } from "../../chart/useCanvas.ts";
import { type Curve, paintWaveforms } from "../../chart/waveform/paintWaveforms.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Tick } from "../../ui/field/Tick.tsx";
import { useTheme } from "../../ui/theme/useTheme.ts";
import { useSpeech, useWords } from "../../words/SpeechContext.tsx";
import { checkTexts } from "./texts.ts";

const never = () => () => {};

/** The readings of the check's clampings, over those of the baseline check where there is one. */
export function WaveformPanel({
  page,
  baselineId,
  unit,
}: {
  readonly page: CheckPage;
  readonly baselineId: string | undefined;
  readonly unit: ForceUnit;
}) {
  const speech = useSpeech();
  const words = useWords(checkTexts);
  const colours = coloursOf(useTheme());
  const own = useWaveforms(page.row.checkId, page.hasWaveform);
  const [overlaid, setOverlaid] = useState(true);
  const compared = useBaselineWaveform(baselineId === page.row.checkId ? undefined : baselineId);
  const curves: Curve[] = [
    ...own.map(({ t, forceN }) => ({ t, forceN, dashed: false })),
    ...(overlaid && compared !== undefined ? [{ t: compared.t, forceN: compared.forceN, dashed: true }] : []),
  ];
  const canvas = useCanvas(
    (context, width, height) =>
      paintWaveforms(context, width, height, {
        curves,
        limits: page.check.limits,
        colours,
        unitN: newtonsPerUnit[unit],
        timed: own[0]?.timed ?? true,
        number: speech.number,
        seconds: words.seconds,
      }),
    never,
  );
  if (page.hasWaveform.length === 0) return <p className="sheet note">{words.noWaveform}</p>;
  const peakN = Math.max(0, ...own.map((one) => Math.max(...one.forceN)));
  return (
    <section className="sheet waveform">
      <div className="row">
        <h2>{words.waveform}</h2>
        {compared === undefined ? (
          <small>{words.noOverlay}</small>
        ) : (
          <Tick checked={overlaid} onTick={setOverlaid}>
            {words.overlay}
          </Tick>
        )}
      </div>
      <div className="picture">
        <canvas ref={canvas} role="img" aria-label={words.waveformAbout(own.length, speech.force(peakN, unit))} />
      </div>
      <p className="row small legend">
        <span className="key-line" /> {words.thisCheck}
        {overlaid && compared !== undefined && (
          <>
            <span className="key-line dashed" /> {words.baselineCheck}
          </>
        )}
      </p>
    </section>
  );
}

const none: readonly WaveformView[] = Object.freeze([]);

function useWaveforms(checkId: string, cycleIds: readonly string[]): readonly WaveformView[] {
  const core = useCore();
  const [views, setViews] = useState(none);
  useEffect(() => {
    let gone = false;
    Promise.all(cycleIds.map((cycleId) => core.client.call("checks.waveform", { checkId, cycleId }))).then(
      (answers) => {
        if (!gone) setViews(answers.flatMap((answer) => (answer.ok ? [answer.value] : [])));
      },
    );
    return () => {
      gone = true;
    };
  }, [core, checkId, cycleIds]);
  return views;
}

/** The baseline check's last clamping with readings: the first one is often still seating. */
function useBaselineWaveform(checkId: string | undefined): WaveformView | undefined {
  const core = useCore();
  const [view, setView] = useState<WaveformView>();
  useEffect(() => {
    let gone = false;
    const load = async (id: string) => {
      const page = await core.client.call("checks.get", { checkId: id });
      const cycleId = page.ok ? page.value.hasWaveform.at(-1) : undefined;
      if (cycleId === undefined) return;
      const answer = await core.client.call("checks.waveform", { checkId: id, cycleId });
      if (answer.ok && !gone) setView(answer.value);
    };
    setView(undefined);
    if (checkId !== undefined) load(checkId);
    return () => {
      gone = true;
    };
  }, [core, checkId]);
  return view;
}
