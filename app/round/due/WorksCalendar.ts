/** On which days the works are open. Plain dates; weekdays as ISO 8601 counts them, 1 = Monday. */
export type WorksCalendar = {
  readonly weekdays: readonly number[];
  /** Holidays and shutdowns, both days inclusive. */
  readonly closed: readonly { readonly from: string; readonly to: string }[];
};

/** Monday to Friday, no holidays: what stands until somebody has said otherwise. */
export const plainCalendar: WorksCalendar = { weekdays: [1, 2, 3, 4, 5], closed: [] };
