import { formatIn } from '../../quantities/format.ts'
import type { Price } from '../../review/figures.ts'
import type { PartsList } from '../../review/page/parts.ts'
import type { WiredCable, Wiring } from '../../review/picture/wiring.ts'
import { tenths, whole } from '../numbers.ts'
import type { Written } from '../units.ts'
import type { Table } from './blocks.ts'

const unknown = 'not known'
const or = <T>(value: T | null, show: (value: T) => string, none = unknown) => (value === null ? none : show(value))
const money = (price: Price | null, count = 1) =>
  or(price, ({ amount, currency }) => formatIn(count * amount, currency))

export function partsTable({ parts, weight_kg: weight, price }: PartsList, { kilograms }: Written): Table {
  const rows = parts.map((part) => [
    String(part.count),
    part.name,
    or(part.weight_kg, (kg) => kilograms(part.count * kg)),
    money(part.price, part.count),
    [part.from, part.quoted_on].flatMap((text) => text ?? []).join(', '),
  ])
  return {
    name: 'Parts with weights and prices',
    head: ['count', 'part', 'weight', 'price', 'quoted'],
    figures: [0, 2, 3],
    rows: [...rows, ['', 'in all', or(weight, kilograms), money(price), '']],
  }
}

export function wiringTable({ arrays }: Wiring): Table {
  return {
    name: 'Wiring of the arrays',
    head: [
      'array',
      'panels',
      'in series',
      'strings',
      'cold Voc',
      'hot Vmp',
      'design current',
      'string fuse',
      'disconnect',
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
      array.string_fuse?.name ?? 'none given',
      array.disconnect?.name ?? 'none given',
    ]),
  }
}

export function cablesTable({ arrays, controllers, battery }: Wiring, { metres }: Written): Table {
  const row = (run: string, cable: WiredCable, fuse: string) => [
    run,
    cable.size ?? 'not given',
    or(cable.length_m, metres, 'not given'),
    or(cable.drop_pct, (drop) => `${tenths(drop)} %`),
    or(cable.ampacity_a, (amps) => `${whole(amps)} A`),
    fuse,
  ]
  return {
    name: 'Fuses and cables',
    head: ['run', 'cable', 'one way', 'lost', 'may carry (guide)', 'fuse'],
    figures: [2, 3, 4],
    rows: [
      ...arrays.map(({ id, cable, string_fuse: fuse }) =>
        row(`${id} to its controller`, cable, fuse ? `${fuse.name} in each string` : 'none given'),
      ),
      ...controllers
        .filter(({ output_fuse: fuse, output_cable: cable }) => fuse !== null || cable.size !== null)
        .map(({ name, output_cable: cable, output_fuse: fuse }) =>
          row(`${name} to the battery`, cable, fuse?.name ?? 'none given'),
        ),
      row(
        'battery, main',
        battery.cable,
        [
          battery.fuse?.name ?? 'none given',
          ...(battery.each_fuse ? [`each battery ${battery.each_fuse.name}`] : []),
        ].join(', '),
      ),
    ],
  }
}

/** What to set on each controller, from the battery's sheet; what it does not say is for the maker to say. */
export function settingsTable({ arrays, controllers, battery }: Wiring, { celsius }: Written): Table {
  const volts = (value: number | null) => or(value, (v) => `${v.toFixed(1)} V`, 'ask the maker')
  return {
    name: 'Settings of the controllers',
    head: ['controller', 'for', 'charge', 'float', 'equalise', 'no charge below', 'battery takes at most'],
    figures: [2, 3, 4, 5, 6],
    rows: controllers.map(({ name, arrays: own }) => [
      name,
      own.map((i) => arrays[i]!.id).join(', '),
      volts(battery.charge_voltage_v),
      volts(battery.float_voltage_v),
      or(battery.equalise_voltage_v, (v) => `${v.toFixed(1)} V`, 'off unless the maker asks'),
      or(battery.lowest_charge_temperature_c, celsius, 'ask the maker'),
      or(battery.max_charge_current_a, (amps) => `${whole(amps)} A`),
    ]),
  }
}
