import { bankOf, chargeParts, inverterEfficiency, type Bank } from './bank.ts'
import type { ResolvedSystem } from './resolved.ts'

type Load = ResolvedSystem['system']['loads'][number]

/** What draws a current, at the battery [A]. */
export interface Part {
  readonly name: string
  readonly amps: number
}

/** Largest continuous current of a bank, with what makes it up, the largest first. */
export interface BankCurrent {
  readonly amps: number
  readonly parts: readonly Part[]
  readonly from: 'loads' | 'sources'
  /** Voltage at which loads draw it [V]. */
  readonly voltage: number
}

/** Loads run for hours, so that fuses and cables get a quarter more. @source US National Electrical Code 210.19 and 215.2 (from memory) */
export const continuous = 1.25

/** Through the main fuse and cable: all that can run at once without a breaker of its own, or all that charges. Null without a bank. */
export function mainCurrent(system: ResolvedSystem): BankCurrent | null {
  const bank = bankOf(system)
  if (!bank) return null
  const loads = loadCurrent(system, bank, ({ own_breaker: own }) => own?.value !== true)
  const charge = sum(chargeParts(system, bank))
  return charge > loads.amps
    ? { amps: charge, parts: byAmps(chargeParts(system, bank)), from: 'sources', voltage: bank.voltage }
    : loads
}

/** What fuse and cable must carry [A]. */
export function mainDesignCurrent(system: ResolvedSystem): number | null {
  const main = mainCurrent(system)
  return main && continuous * main.amps
}

/** All that can run at once, in the month in which that is most, at the lowest working voltage of the bank. */
export function loadCurrent(
  { system }: ResolvedSystem,
  bank: Bank,
  counts: (load: Load) => boolean = () => true,
): BankCurrent {
  const efficiency = inverterEfficiency(system.inverter.efficiency?.value)
  let most: readonly Part[] = []
  for (let month = 1; month <= 12; month++) {
    const on = together(
      system.loads.filter((load) => counts(load) && isUsedIn(load, month)),
      ({ power, supply }) => (power?.value ?? 0) / (supply?.value === 'ac' ? efficiency : 1),
    )
    const parts = [...direct(on, bank), ...inverted(on, system.inverter, efficiency, bank)]
    if (sum(parts) > sum(most)) most = parts
  }
  return {
    amps: sum(most),
    parts: byAmps(most),
    from: 'loads',
    voltage: bank.lowest,
  }
}

/** Power that runs at once through the inverter [W], in the month in which that is most. */
export function acPower({ system }: ResolvedSystem): number {
  const months = Array.from({ length: 12 }, (_, m) =>
    together(system.loads.filter((load) => load.supply?.value === 'ac' && isUsedIn(load, m + 1))),
  )
  return Math.max(...months.map((loads) => loads.reduce((all, { power }) => all + (power?.value ?? 0), 0)))
}

/** Most for seconds through the inverter [W]: the load that adds most as it starts, while the others run; null where none says. */
export function startingPower(system: ResolvedSystem): { readonly name: string; readonly watts: number } | null {
  const added = ({ surge, power }: Load) => (surge?.value ?? 0) - (power?.value ?? 0)
  const motors = system.system.loads.filter((load) => load.supply?.value === 'ac' && load.surge && added(load) > 0)
  const [most] = [...motors].sort((a, b) => added(b) - added(a))
  return most ? { name: most.name?.text ?? 'a load', watts: acPower(system) + added(most) } : null
}

/** Of loads that never run together only the largest, as a rule by what each takes itself [W]. */
function together(
  loads: readonly Load[],
  drawn: (load: Load) => number = ({ power }) => power?.value ?? 0,
): readonly Load[] {
  const largest = new Map<string, Load>()
  for (const load of loads) {
    const group = load.one_of?.value
    const other = group === undefined ? undefined : largest.get(group)
    if (group !== undefined && (other ? drawn(other) : -1) < drawn(load)) largest.set(group, load)
  }
  return loads.filter((load) => load.one_of === undefined || largest.get(load.one_of.value) === load)
}

const isUsedIn = ({ months }: Load, month: number) => months.length === 0 || months.some(({ value }) => value === month)

const direct = (loads: readonly Load[], { lowest }: Bank): readonly Part[] =>
  loads
    .filter(({ supply }) => supply?.value !== 'ac')
    .map(({ name, power }) => ({ name: name?.text ?? 'a load', amps: (power?.value ?? 0) / lowest }))

/** Through the inverter, which gives no more than its power, takes its losses beside, and its standby. */
function inverted(
  loads: readonly Load[],
  { power: limit, standby }: ResolvedSystem['system']['inverter'],
  efficiency: number,
  { lowest }: Bank,
): readonly Part[] {
  const ac = loads.filter(({ supply }) => supply?.value === 'ac')
  const all = ac.reduce((total, { power }) => total + (power?.value ?? 0), 0)
  const share = limit && limit.value > 0 && all > limit.value ? limit.value / all : 1
  const own = standby ? [{ name: 'the inverter itself', amps: standby.value / lowest }] : []
  return [
    ...ac.map(({ name, power }) => ({
      name: name?.text ?? 'a load',
      amps: (share * (power?.value ?? 0)) / efficiency / lowest,
    })),
    ...own,
  ]
}

const byAmps = (parts: readonly Part[]) => [...parts].sort((a, b) => b.amps - a.amps)

export const sum = (parts: readonly Part[]) => parts.reduce((total, { amps }) => total + amps, 0)
