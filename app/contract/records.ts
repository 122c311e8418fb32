import { z } from "zod";
import { id, reasonText } from "../ledger/fields.ts";
import type { ServiceEvent, Works } from "../ledger/register.ts";
import { adapterTaken, gauge, operator, serviceEvent, spindle, works } from "../ledger/register.ts";
import { type ImportPreview, listFile } from "./importViews.ts";
import { method, nothing } from "./method.ts";
import type {
  AdapterRow,
  CheckPage,
  CheckRow,
  FleetView,
  GaugeRow,
  OperatorView,
  SpindlePage,
  SpindleRow,
  WaveformView,
} from "./recordViews.ts";

/** A page of a spindle's checks, newest first; `after` is the last check of the page before. */
const page = z.strictObject({
  spindleId: id,
  after: id.optional(),
  limit: z.number().int().min(1).max(500),
});

/** Calls about what is kept. A record saved without its id is new; with it, it is replaced as a whole. */
export const records = {
  "works.save": method<Works>()(works),

  "spindles.list": method<readonly SpindleRow[]>()(nothing),
  /** Ranking, common-mode finding, forecasts of all spindles: worked out in a job, cached by ledger position. */
  "spindles.fleet": method<FleetView>()(nothing),
  "spindles.page": method<SpindlePage>()(
    z.strictObject({ spindleId: id, xAxis: z.enum(["date", "counter"]).optional() }),
  ),
  "spindles.save": method<SpindleRow>()(spindle.extend({ spindleId: id.optional() })),

  "adapters.list": method<readonly AdapterRow[]>()(nothing),
  "adapters.save": method<AdapterRow>()(adapterTaken.extend({ adapterId: id.optional() })),
  "gauges.list": method<readonly GaugeRow[]>()(nothing),
  "gauges.save": method<GaugeRow>()(gauge.extend({ gaugeId: id.optional() })),
  "operators.list": method<readonly OperatorView[]>()(nothing),
  "operators.save": method<OperatorView>()(
    operator.extend({
      operatorId: id.optional(),
      name: z.string().trim().min(1, "a name is needed").max(120),
      /** Absent: made from the name. */
      initials: z.string().trim().min(1).max(8).optional(),
    }),
  ),

  /** What a list from a spreadsheet would bring into the register, and what stands against it. Nothing is filed. */
  "register.preview": method<ImportPreview>()(listFile),
  /** Takes a list into the register, all of it or nothing. `job.finished` carries an `Imported`. */
  "register.import": method<{ readonly jobId: string }>()(listFile),

  "checks.list": method<{ readonly rows: readonly CheckRow[]; readonly more: boolean }>()(page),
  "checks.get": method<CheckPage>()(z.strictObject({ checkId: id })),
  "checks.waveform": method<WaveformView>()(z.strictObject({ checkId: id, cycleId: id })),
  /** What today's limits and rules would say of all checks, beside what was filed. `job.finished` carries a `Rejudged`. */
  "checks.rejudge": method<{ readonly jobId: string }>()(nothing),
  "checks.void": method<SpindleRow>()(z.strictObject({ checkId: id, reason: reasonText, operatorId: id.optional() })),
  /** Takes back the check just filed, within a minute, without being asked why. */
  "checks.undo": method<SpindleRow>()(z.strictObject({ checkId: id })),

  "baseline.choose": method<SpindleRow>()(
    z.strictObject({ spindleId: id, checkId: id, reason: reasonText, operatorId: id.optional() }),
  ),
  "stop.release": method<SpindleRow>()(
    z.strictObject({
      spindleId: id,
      checkId: id,
      reason: reasonText,
      operatorId: id,
      workOrder: z.string().max(80).optional(),
    }),
  ),
  "services.save": method<ServiceEvent>()(serviceEvent.extend({ eventId: id.optional() })),
} as const;
