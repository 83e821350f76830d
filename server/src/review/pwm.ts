import { diodeAt } from '../physics/diode-model.ts'
import { cellTemperature } from '../physics/mounting.ts'
import { clampedPowerTable, linearPowerTable, type PowerTable } from '../physics/power-table.ts'
import { currentAt, maxPower } from '../physics/single-diode.ts'
import type { Panel } from '../records/records.generated.ts'
import { panelPower } from '../values/panel-power.ts'
import { rossOf } from '../values/mounted.ts'
import type { Bank } from './bank.ts'
import { siteAt } from './panel-at.ts'
import type { ResolvedArray, ResolvedPanels, ResolvedSystem } from './resolved.ts'

export interface PwmPower {
  /** At the maximum power point, and clamped to the battery [W] for one panel. */
  readonly best: number
  readonly clamped: number
}

/** Drop between panel and battery in a controller that only switches [V]. Common practice, no source. */
export const switchDrop = 0.5

/**
 * Voltage at which a controller that only switches holds each panel [V]: that of the bank, halfway between nominal and
 * charged (common practice, no source), over the panels in series. Null for one that seeks the maximum power point, and without a bank.
 */
export function clampOf({ controller, entry }: ResolvedArray, bank: Bank | null): number | null {
  if (controller?.record.type?.value !== 'pwm' || !bank) return null
  return (bank.voltage + bank.charging) / 2 / Math.max(1, entry.wiring.in_series?.value ?? 1)
}

/**
 * What one panel gives when a controller joins it to the battery instead of seeking its maximum power point: in 800 W/m2 and air of
 * 20 °C, warm as mounted.
 *
 * @param voltage  battery voltage that falls to one panel, see `clampOf` [V]
 * @returns        null where no diode fits the sheet
 */
export function pwmPower(system: ResolvedSystem, panels: ResolvedPanels, voltage: number): PwmPower | null {
  const panel = panels.panel?.record
  const model = panel && panelPower(panel)?.diode
  if (!panel || !model) return null
  const cell = cellTemperature(20, 800, rossOf(panel, siteAt(system, panels)))
  const diode = diodeAt(model, 800, cell)
  return { best: maxPower(diode).p, clamped: Math.max(0, voltage * currentAt(diode, voltage + switchDrop)) }
}

const tables = new WeakMap<Panel, Map<number, PowerTable | null>>()

/** Power of a panel that is held at a voltage; without a diode at the current of its maximum power point. Null where its sheet says too little. */
export function clampedTable(panel: Panel, voltage: number): PowerTable | null {
  const own = tables.get(panel) ?? new Map<number, PowerTable | null>()
  tables.set(panel, own)
  const table = own.get(voltage) ?? work(panel, voltage)
  own.set(voltage, table)
  return table
}

function work(panel: Panel, voltage: number): PowerTable | null {
  const power = panelPower(panel)
  const { imp } = panel.stc
  if (power?.diode) return clampedPowerTable(power.diode, voltage, switchDrop)
  return power && imp ? linearPowerTable(voltage * imp.value, 0) : null
}
