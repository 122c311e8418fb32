import { useState } from "react";
import { useStore } from "zustand";
import type { PortView, SerialSetting } from "../../../app/contract/linkViews.ts";
import { useCore } from "../../state/CoreContext.ts";
import { Button } from "../../ui/Button.tsx";
import { Progress } from "../../ui/feedback/Progress.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { portMemory, settingText, usualSetting } from "./portMemory.ts";
import { SerialSettingFields } from "./SerialSettingFields.tsx";
import { linkTexts } from "./texts.ts";
import { useOpenLink } from "./useOpenLink.ts";

/** One port: connect as last time, find its setting by listening, or set it by hand. */
export function PortRow({ port, gaugeId }: { readonly port: PortView; readonly gaugeId: string | undefined }) {
  const core = useCore();
  const report = useReport();
  const words = useWords(linkTexts);
  const open = useOpenLink();
  const [setting, setSetting] = useState<SerialSetting>(() => portMemory.of(port.path) ?? usualSetting);
  const [byHand, setByHand] = useState(false);
  const [jobId, setJobId] = useState<string>();
  const job = useStore(core.jobs, (state) => (jobId === undefined ? undefined : state.jobs[jobId]));
  const known = portMemory.of(port.path) !== undefined;

  if (port.obstacle !== undefined) {
    return (
      <li>
        <b>{port.label}</b>
        <small>{port.obstacle.message}</small>
      </li>
    );
  }
  const find = async () => {
    const started = await report(core.client.call("ports.find", { path: port.path }));
    setJobId(started?.jobId);
  };
  const found = job?.state === "finished" ? (job.result as SerialSetting | null | undefined) : undefined; // what `ports.find` finishes with
  const connect = (use: SerialSetting) => {
    setSetting(use);
    open({ kind: "serial", path: port.path, setting: use }, gaugeId);
  };
  return (
    <li>
      <Button kind={known ? "main" : "plain"} onClick={() => connect(setting)}>
        {port.label}
      </Button>
      <small>{known ? words.usedLast(settingText(setting)) : settingText(setting)}</small>
      <Button kind="quiet" busy={job?.state === "running"} onClick={find}>
        {words.findSetting}
      </Button>
      <Button kind="quiet" aria-expanded={byHand} onClick={() => setByHand(!byHand)}>
        {words.portSettings}
      </Button>
      {job?.state === "running" && jobId !== undefined && (
        <Progress
          label={job.message ?? words.finding}
          done={job.done}
          total={job.total}
          act={<Button onClick={() => report(core.client.call("job.stop", { jobId }))}>{words.stop}</Button>}
        />
      )}
      {job !== undefined && job.state !== "running" && (
        <span role="status" className="row">
          {found ? (
            <Button kind="main" onClick={() => connect(found)}>
              {`${words.connect}: ${settingText(found)}`}
            </Button>
          ) : (
            (job.message ?? words.notFound)
          )}
        </span>
      )}
      {byHand && <SerialSettingFields setting={setting} onSetting={setSetting} />}
    </li>
  );
}
