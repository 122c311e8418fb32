import type { SpindleRow } from "../../../app/contract/recordViews.ts";
import { verdictTexts } from "../../../app/words/verdictTexts.ts";
import { Tick } from "../../ui/field/Tick.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import type { Filter } from "./filterRows.ts";
import { type Order, orders } from "./sortRows.ts";
import { spindlesTexts } from "./texts.ts";

const verdicts = ["stop", "act", "watch", "cannotTell", "good", "never"] as const;
const different = (values: readonly string[]) => [...new Set(values.filter((value) => value !== ""))].sort();

/** Narrowing the list; what is set stays in sight. */
export function FilterBar({
  rows,
  filter,
  onFilter,
  shown,
  order,
  onOrder,
}: {
  readonly rows: readonly SpindleRow[];
  readonly filter: Filter;
  readonly onFilter: (filter: Filter) => void;
  readonly shown: number;
  readonly order: Order;
  readonly onOrder: (order: Order) => void;
}) {
  const words = useWords(spindlesTexts);
  const verdictWords = useWords(verdictTexts);
  const areas = different(rows.map((row) => row.spindle.area));
  const tapers = different(rows.map((row) => row.spindle.taper));
  const hasRetired = rows.some((row) => row.spindle.state === "retired");
  return (
    <section aria-label={words.search} className="filters">
      <input
        type="text"
        aria-label={words.search}
        placeholder={words.search}
        value={filter.text}
        onChange={(event) => onFilter({ ...filter, text: event.target.value })}
      />
      <select
        aria-label={words.area}
        value={filter.area}
        onChange={(e) => onFilter({ ...filter, area: e.target.value })}
      >
        <option value="">{words.allAreas}</option>
        {areas.map((area) => (
          <option key={area}>{area}</option>
        ))}
      </select>
      <select
        aria-label={words.taper}
        value={filter.taper}
        onChange={(e) => onFilter({ ...filter, taper: e.target.value })}
      >
        <option value="">{words.allTapers}</option>
        {tapers.map((taper) => (
          <option key={taper}>{taper}</option>
        ))}
      </select>
      <select
        aria-label={words.verdict}
        value={filter.verdict}
        // The options are the only values it can have.
        onChange={(e) => onFilter({ ...filter, verdict: e.target.value as Filter["verdict"] })}
      >
        <option value="">{words.allVerdicts}</option>
        {verdicts.map((verdict) => (
          <option key={verdict} value={verdict}>
            {verdictWords[verdict]}
          </option>
        ))}
      </select>
      <select
        aria-label={words.order}
        value={order}
        // The options are the only values it can have.
        onChange={(e) => onOrder(e.target.value as Order)}
      >
        {orders.map((one) => (
          <option key={one} value={one}>
            {words[`order.${one}`]}
          </option>
        ))}
      </select>
      {hasRetired && (
        <Tick checked={filter.withRetired} onTick={(withRetired) => onFilter({ ...filter, withRetired })}>
          {words.withRetired}
        </Tick>
      )}
      <span role="status" className="soft small">
        {shown < rows.length ? words.shown(shown, rows.length) : ""}
      </span>
    </section>
  );
}
