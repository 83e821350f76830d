import type { SideBySide } from '../values/side-by-side.ts'
import type { Mounting } from '../values/site.ts'
import { translated, type Bundle } from '../wording/bundle.ts'
import { inCatalogue, sayIn } from '../wording/phrase.ts'
import { moneyCell, numberCell, textCell, unknown, wordCell, type Cell, type Column } from '../rows/cell.ts'

type C = Column<SideBySide>

const panel: C = { key: 'panel', label: inCatalogue`panel`, cell: ({ answers }) => textCell(answers.panel) }

const hot = (mounting: Mounting): C => ({
  key: `hot_${mounting.replace(' ', '_')}`,
  label: mounting, // as records name it
  better: 'more',
  cell: ({ answers }) => numberCell(answers.pmax_hot_w[mounting], 1, 'W'),
})

const joined = (list: readonly string[], bundle: Bundle | undefined) =>
  list.length > 0 ? textCell(list.join(', ')) : wordCell(inCatalogue`none named`, bundle)

/** What somebody asks who chooses a panel, each with the columns that answer it. */
export const questions: readonly { readonly question: string; readonly columns: readonly C[] }[] = [
  {
    question: inCatalogue`Efficiency`,
    columns: [
      {
        key: 'efficiency',
        label: inCatalogue`from its size`,
        better: 'more',
        cell: ({ answers }) => numberCell(answers.efficiency, 1, '%', 100),
      },
      {
        key: 'efficiency_printed',
        label: inCatalogue`as printed`,
        better: 'more',
        cell: ({ answers }) => numberCell(answers.efficiency_printed, 1, '%', 100),
      },
    ],
  },
  {
    question: inCatalogue`Power left on a hot day, by mounting`,
    columns: [hot('bonded'), hot('canvas'), hot('standoff'), hot('open rack')],
  },
  {
    question: inCatalogue`Power per weight`,
    columns: [
      {
        key: 'w_per_kg',
        label: inCatalogue`panel alone`,
        better: 'more',
        cell: ({ answers }, bundle) => numberCell(answers.w_per_kg, 1, 'W/kg', 1, bundle),
      },
      {
        key: 'w_per_kg_framed',
        label: inCatalogue`with its frame`,
        better: 'more',
        cell: ({ answers }, bundle) => numberCell(answers.w_per_kg_framed, 1, 'W/kg', 1, bundle),
      },
    ],
  },
  {
    question: inCatalogue`Price`,
    columns: [
      {
        key: 'price_per_watt',
        label: inCatalogue`per watt`,
        better: 'less',
        cell: ({ answers }) => moneyCell(answers.price_per_watt),
      },
      {
        key: 'price_per_kwh_warranted',
        label: inCatalogue`per warranted kWh`,
        better: 'less',
        cell: ({ answers }) => moneyCell(answers.price_per_kwh.warranted, 3),
      },
      {
        key: 'price_per_kwh_expected',
        label: inCatalogue`per expected kWh`,
        better: 'less',
        cell: ({ answers }) => moneyCell(answers.price_per_kwh.expected, 3),
      },
      {
        key: 'expected_life',
        label: inCatalogue`expected life`,
        better: 'more',
        cell: ({ life }, bundle) => {
          if (!life) return unknown
          const years = Number(life.years.toFixed(1))
          return {
            value: years,
            text: inYears(years, bundle),
          }
        },
      },
      {
        key: 'expected_life_from',
        label: inCatalogue`taken from`,
        cell: ({ life }, bundle) => (life ? wordCell(life.from, bundle) : unknown),
      },
    ],
  },
  {
    question: inCatalogue`Warranty and durability`,
    columns: [
      {
        key: 'output_years',
        label: inCatalogue`output`,
        better: 'more',
        cell: ({ answers, steps }, bundle) => ({
          value: answers.warranty.output_years,
          text:
            steps.map(({ years, share }) => `${inYears(years, bundle)} ${percent(share)} %`).join(', ') || unknown.text,
        }),
      },
      {
        key: 'workmanship_years',
        label: inCatalogue`workmanship`,
        better: 'more',
        cell: ({ answers }, bundle) => yearsCell(answers.warranty.workmanship_years, bundle),
      },
      { key: 'surface', label: inCatalogue`front cover`, cell: ({ answers }) => textCell(answers.surface) },
      {
        key: 'exclusions',
        label: inCatalogue`voided by`,
        cell: ({ answers }, bundle) => joined(answers.warranty.exclusions, bundle),
      },
    ],
  },
]

const inYears = (years: number, bundle: Bundle | undefined) =>
  years === 1 ? sayIn(bundle)`${years} year` : sayIn(bundle)`${years} years`
const yearsCell = (years: number | null, bundle: Bundle | undefined): Cell =>
  years === null ? unknown : { value: years, text: inYears(years, bundle) }
const percent = (share: number) => Number((100 * share).toFixed(1))

const notKnown: C = {
  key: 'not_known',
  label: inCatalogue`not known`,
  cell: ({ answers: { not_known: names } }, bundle) =>
    names.length === 0
      ? wordCell(inCatalogue`nothing`, bundle)
      : { value: names.join(', '), text: names.map((name) => translated(name, bundle)).join(', ') },
}

/** In CSV, where prices are numbers alone. */
const currency: C = {
  key: 'currency',
  label: inCatalogue`currency`,
  cell: ({ answers: { price_per_watt: perWatt, price_per_kwh: perKwh } }) =>
    textCell((perWatt ?? perKwh.warranted ?? perKwh.expected)?.currency ?? null),
}

export const leading = panel

/** Columns that rest on an expected life. */
const onLife = ['price_per_kwh_expected', 'expected_life']
export const restsOnLife = (columns: readonly C[]): boolean => columns.some(({ key }) => onLife.includes(key))

/** Every column, in the order of the questions. */
export const panelColumns: readonly C[] = [panel, ...questions.flatMap(({ columns }) => columns), currency, notKnown]

export const lastQuestion = { question: inCatalogue`What is not known`, columns: [notKnown] }

/** What is common practice says so beside the figures, whatever the format. */
export function notesOn(rows: readonly SideBySide[], bundle?: Bundle): readonly string[] {
  if (!rows.some(({ life }) => life?.from === 'common practice')) return []
  return [
    sayIn(
      bundle,
    )`Common practice, no source: bonded flexible panels last one to five years (4 are assumed here), and rigid ones 25. Set \`expected_life\` in wattproof.yaml to change this.`,
  ]
}
