import { type FormEvent, useState } from "react";
import { Button } from "../../ui/Button.tsx";
import { TextField } from "../../ui/field/TextField.tsx";
import { parseNumber } from "../../words/parseNumber.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { linkTexts } from "./texts.ts";
import { useOpenLink } from "./useOpenLink.ts";

/** A gauge behind a device server. */
export function NetworkForm({ gaugeId }: { readonly gaugeId: string | undefined }) {
  const words = useWords(linkTexts);
  const open = useOpenLink();
  const [host, setHost] = useState("");
  const [portText, setPortText] = useState("");
  const [tried, setTried] = useState(false);
  const port = parseNumber(portText);
  const portGood = typeof port === "number" && Number.isInteger(port) && port >= 1 && port <= 65_535;
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setTried(true);
    if (portGood && host.trim() !== "") open({ kind: "tcp", host: host.trim(), port }, gaugeId);
  };
  return (
    <form className="fields" noValidate onSubmit={submit}>
      <TextField
        label={words.host}
        value={host}
        onText={setHost}
        error={tried && host.trim() === "" ? words.hostNeeded : undefined}
      />
      <TextField
        label={words.port}
        inputMode="numeric"
        value={portText}
        onText={setPortText}
        error={tried && !portGood ? words.portRange : undefined}
      />
      <Button type="submit">{words.connect}</Button>
    </form>
  );
}
