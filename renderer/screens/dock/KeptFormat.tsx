import { useState } from "react";
import type { StoredDumpFormat } from "../../../app/ledger/round.ts";
import { Button } from "../../ui/Button.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { dockTexts } from "./texts.ts";

/** One kept way of reading: its name, and whether it is offered. */
export function KeptFormat({
  format,
  onSave,
}: {
  readonly format: StoredDumpFormat;
  readonly onSave: (format: StoredDumpFormat, name: string, state: "inUse" | "retired") => Promise<void>;
}) {
  const words = useWords(dockTexts);
  const [name, setName] = useState(format.name);
  const retired = format.state === "retired";
  const typed = name.trim();
  return (
    <li className="row">
      <TextField label={words.formatName(format.name)} value={name} onText={setName} maxLength={80} />
      <Button
        aria-label={words.renameNamed(format.name)}
        disabled={typed === "" || typed === format.name}
        onClick={() => onSave(format, typed, retired ? "retired" : "inUse")}
      >
        {words.rename}
      </Button>
      <Button
        kind="quiet"
        aria-label={(retired ? words.useAgainNamed : words.retireNamed)(format.name)}
        onClick={() => onSave(format, format.name, retired ? "inUse" : "retired")}
      >
        {retired ? words.useAgain : words.retire}
      </Button>
      {retired && <span className="soft">{words.retired}</span>}
    </li>
  );
}
