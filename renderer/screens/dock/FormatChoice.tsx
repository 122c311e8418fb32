import { useCallback, useEffect, useState } from "react";
import type { StoredDumpFormat } from "../../../app/ledger/round.ts";
import { useCore } from "../../state/CoreContext.ts";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { useReport } from "../shell/useReport.ts";
import { KeptFormat } from "./KeptFormat.tsx";
import { dockTexts } from "./texts.ts";

/** How a memory is read: found out by itself, or by a way that was kept. What is kept can be renamed and taken out of use. */
export function FormatChoice({
  chosen,
  keptCount,
  onChoose,
}: {
  /** Empty: found out by itself. */
  readonly chosen: string;
  /** Counts what was kept meanwhile: each time the list is asked for anew. */
  readonly keptCount: number;
  readonly onChoose: (formatId: string) => void;
}) {
  const core = useCore();
  const report = useReport();
  const words = useWords(dockTexts);
  const [formats, setFormats] = useState<readonly StoredDumpFormat[]>([]);
  const reload = useCallback(async () => {
    const list = await report(core.client.call("formats.list", {}));
    if (list !== undefined) setFormats(list);
  }, [core, report]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: asked for again when one was kept
  useEffect(() => {
    reload();
  }, [reload, keptCount]);
  if (formats.length === 0) return null;
  const inUse = formats.filter((format) => format.state !== "retired");
  const save = async (format: StoredDumpFormat, name: string, state: "inUse" | "retired") => {
    const saved = await report(core.client.call("formats.save", { formatId: format.formatId, name, state }));
    if (saved?.state === "retired" && saved.formatId === chosen) onChoose("");
    if (saved !== undefined) await reload();
  };
  return (
    <>
      <SelectField
        label={words.format}
        value={chosen}
        options={[
          { value: "", label: words.formatFound },
          ...inUse.map(({ formatId, name }) => ({ value: formatId, label: name })),
        ]}
        onChoose={onChoose}
      />
      <details className="kept-formats">
        <summary>{words.formatsKept(formats.length)}</summary>
        <ul>
          {formats.map((format) => (
            <KeptFormat key={`${format.formatId} ${format.name}`} format={format} onSave={save} />
          ))}
        </ul>
      </details>
    </>
  );
}
