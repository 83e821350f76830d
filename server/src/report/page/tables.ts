import { formatIn } from '../../quantities/format.ts'
import type { Price } from '../../review/figures.ts'
import type { PartsList } from '../../review/page/parts.ts'
import type { WiredCable, Wiring } from '../../review/picture/wiring.ts'
import { tenths, whole } from '../numbers.ts'
import type { Written } from '../units.ts'
import type { Table } from './blocks.ts'
import type { sayIn } from '../../wording/phrase.ts'

type Say = ReturnType<typeof sayIn>

const orIn =
  (say: Say) =>
  <T>(value: T | null, show: (value: T) => string, none = say`not known`) =>
    value === null ? none : show(value)
const moneyIn =
  (say: Say) =>
  (price: Price | null, count = 1) =>
    orIn(say)(price, ({ amount, currency }) => formatIn(count * amount, currency))

export function partsTable({ parts, weight_kg: weight, price }: PartsList, { kilograms }: Written, say: Say): Table {
  const [or, money] = [orIn(say), moneyIn(say)]
  const rows = parts.map((part) => [
    String(part.count),
    part.name,
    or(part.weight_kg, (kg) => kilograms(part.count * kg)),
    money(part.price, part.count),
    [part.from, part.quoted_on].flatMap((text) => text ?? []).join(', '),
  ])
  return {
    name: say`Parts with weights and prices`,
    head: [say`count`, say`part`, say`weight`, say`price`, say`quoted`],
    figures: [0, 2, 3],
    rows: [...rows, ['', say`in all`, or(weight, kilograms), money(price), '']],
  }
}

export function wiringTable({ arrays }: Wiring, say: Say): Table {
  const or = orIn(say)
  return {
    name: say`Wiring of the arrays`,
    head: [
      say`array`,
      say`panels`,
      say`in series`,
      say`strings`,
      say`cold Voc`,
      say`hot Vmp`,
      say`design current`,
      say`string fuse`,
      say`disconnect`,
    ],
    figures: [2, 3, 4, 5, 6],
    rows: arrays.map((array) => [
      array.id,
      array.panels.map(({ count, name }) => `${count} x ${name}`).join(', '),
      or(array.in_series, whole),
      or(array.in_parallel, whole),
      or(array.voc_cold_v, (v) => `${tenths(v)} V`),
      or(array.vmp_hot_v, (v) => `${tenths(v)} V`),
      or(array.isc_design_a, (a) => `${tenths(a)} A`),
      array.string_fuse?.name ?? say`none given`,
      array.disconnect?.name ?? say`none given`,
    ]),
  }
}

export function cablesTable({ arrays, controllers, battery }: Wiring, { metres }: Written, say: Say): Table {
  const or = orIn(say)
  const row = (run: string, cable: WiredCable, fuse: string) => [
    run,
    cable.size ?? say`not given`,
    or(cable.length_m, metres, say`not given`),
    or(cable.drop_pct, (drop) => `${tenths(drop)} %`),
    or(cable.ampacity_a, (amps) => `${whole(amps)} A`),
    fuse,
  ]
  return {
    name: say`Fuses and cables`,
    head: [say`run`, say`cable`, say`one way`, say`lost`, say`may carry (guide)`, say`fuse`],
    figures: [2, 3, 4],
    rows: [
      ...arrays.map(({ id, cable, string_fuse: fuse }) =>
        row(say`${id} to its controller`, cable, fuse ? say`${fuse.name} in each string` : say`none given`),
      ),
      ...controllers
        .filter(({ output_fuse: fuse, output_cable: cable }) => fuse !== null || cable.size !== null)
        .map(({ name, output_cable: cable, output_fuse: fuse }) =>
          row(say`${name} to the battery`, cable, fuse?.name ?? say`none given`),
        ),
      row(
        say`battery, main`,
        battery.cable,
        [
          battery.fuse?.name ?? say`none given`,
          ...(battery.each_fuse ? [say`each battery ${battery.each_fuse.name}`] : []),
        ].join(', '),
      ),
    ],
  }
}

/** What to set on each controller, from the battery's sheet; what it does not say is for the maker to say. */
export function settingsTable({ arrays, controllers, battery }: Wiring, { celsius }: Written, say: Say): Table {
  const or = orIn(say)
  const volts = (value: number | null) => or(value, (v) => `${v.toFixed(1)} V`, say`ask the maker`)
  return {
    name: say`Settings of the controllers`,
    head: [
      say`controller`,
      say`for`,
      say`charge`,
      say`float`,
      say`equalise`,
      say`no charge below`,
      say`battery takes at most`,
    ],
    figures: [2, 3, 4, 5, 6],
    rows: controllers.map(({ name, arrays: own }) => [
      name,
      own.map((i) => arrays[i]!.id).join(', '),
      volts(battery.charge_voltage_v),
      volts(battery.float_voltage_v),
      or(battery.equalise_voltage_v, (v) => `${v.toFixed(1)} V`, say`off unless the maker asks`),
      or(battery.lowest_charge_temperature_c, celsius, say`ask the maker`),
      or(battery.max_charge_current_a, (amps) => `${whole(amps)} A`),
    ]),
  }
}
