import { type DateOrder, orderToldBy, readDay } from "./readDay.ts";

/** What a column of dates tells of its order: the rows that tell it, and the first that leaves it open. */
export type ToldOrder = {
  readonly order: DateOrder | undefined;
  /** Two rows that tell different orders. */
  readonly mixed: { readonly row: number; readonly text: string; readonly other: number } | undefined;
  readonly open: { readonly row: number; readonly text: string } | undefined;
};

/** One date whose day is over 12 tells the order of all. */
export function dateOrderOf(cells: Iterable<{ readonly row: number; readonly text: string }>): ToldOrder {
  let first: { readonly row: number; readonly order: DateOrder } | undefined;
  let mixed: ToldOrder["mixed"];
  let open: ToldOrder["open"];
  for (const { row, text } of cells) {
    const order = orderToldBy(text);
    if (order === undefined) {
      if (open === undefined && readDay(text, undefined) === "undecided") open = { row, text };
    } else if (first === undefined) first = { row, order };
    else if (order !== first.order) mixed ??= { row, text, other: first.row };
  }
  return { order: mixed === undefined ? first?.order : undefined, mixed, open };
}
