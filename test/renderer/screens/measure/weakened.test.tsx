import { cleanup, render } from "@testing-library/react";
import { afterEach, describe, expect, it } from "vitest";
import type { Warning } from "../../../../app/contract/seriesViews.ts";
import { Weakened } from "../../../../renderer/screens/measure/live/Weakened.tsx";
import { createSpeech } from "../../../../renderer/words/Speech.ts";
import { SpeechContext } from "../../../../renderer/words/SpeechContext.tsx";

const remark = {
  changed: { code: "gaugeChanged" },
  off: { code: "gaugeFoundOff", about: "Gauge 2" },
  pastDue: { code: "proofPastDue", about: "Gauge 2" },
  one: { code: "oneClamping" },
  noZero: { code: "noZeroAfter" },
} as const;
const warned: Warning = { code: "proofPastDue", about: "2026-10-02", weight: "ask", overriddenWith: undefined };

function said(by: readonly (typeof remark)[keyof typeof remark][], warnings: readonly Warning[] = []) {
  const { container } = render(
    <SpeechContext value={createSpeech("en", "en-GB")}>
      <Weakened by={by} warnings={warnings} unit="kN" />
    </SpeechContext>,
  );
  return container.textContent?.replace(/\u00a0/g, " ");
}

describe("what weakens the verdict that forms", () => {
  afterEach(cleanup);

  it("is said in full while it is short", () => {
    expect(said([remark.changed, remark.one, remark.noZero])).toBe(
      "Weakened by: another gauge than last time, one clamping only and no zero was seen at the end",
    );
  });

  it("is counted from the third on where there is more, and says where to find it", () => {
    expect(said([remark.changed, remark.off, remark.one, remark.noZero])).toMatch(
      /^Weakened by: another gauge than last time, .*Gauge 2.* and 2 more \(see How sure\?\)$/,
    );
  });

  it("is not said a second time beside its warning", () => {
    expect(said([remark.pastDue, remark.one], [warned])).toBe("Weakened by: one clamping only");
    cleanup();
    expect(said([remark.pastDue], [warned])).toBe("");
  });
});
