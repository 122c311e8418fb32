import type { ImportPreview } from "../../../app/contract/importViews.ts";
import { useWords } from "../../words/SpeechContext.tsx";
import { fieldTexts } from "./fieldTexts.ts";
import { importTexts } from "./texts.ts";
import "./importList.css";

/** What each column is taken for, to be changed. */
export function ColumnTable({
  preview,
  onMapping,
}: {
  readonly preview: ImportPreview;
  readonly onMapping: (mapping: (string | null)[]) => void;
}) {
  const words = useWords(importTexts);
  const fields = useWords(fieldTexts) as Readonly<Record<string, string>>; // a newer core may know more fields
  const choose = (place: number, field: string) =>
    onMapping(preview.columns.map((c, i) => (i === place ? (field === "" ? null : field) : (c.field ?? null))));
  return (
    <table className="import-columns">
      <caption className="unseen">{words.columns}</caption>
      <thead>
        <tr>
          <th scope="col">{words.colHead}</th>
          <th scope="col">{words.colExamples}</th>
          <th scope="col">{words.colField}</th>
        </tr>
      </thead>
      <tbody>
        {preview.columns.map((column, place) => (
          <tr key={column.name}>
            <th scope="row">{column.name}</th>
            <td className="soft">{column.examples.join(" · ")}</td>
            <td>
              <select
                aria-label={`${column.name}: ${words.colField}`}
                value={column.field ?? ""}
                onChange={(e) => choose(place, e.target.value)}
              >
                <option value="">{words.leftOut}</option>
                {preview.fields.map(({ field }) => (
                  <option key={field} value={field}>
                    {fields[field] ?? field}
                  </option>
                ))}
              </select>
            </td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
