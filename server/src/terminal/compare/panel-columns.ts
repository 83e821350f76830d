import type { SideBySide } from '../../values/side-by-side.ts'
import type { Mounting } from '../../values/site.ts'
import { moneyCell, numberCell, textCell, unknown, type Cell, type Column } from '../tables/column.ts'

type C = Column<SideBySide>

const panel: C = { key: 'panel', label: 'panel', cell: ({ answers }) => textCell(answers.panel) }

const hot = (mounting: Mounting): C => ({
  key: `hot_${mounting.replace(' ', '_')}`,
  label: mounting,
  better: 'more',
  cell: ({ answers }) => numberCell(answers.pmax_hot_w[mounting], 1, 'W'),
})

const none: Cell = { value: 'none named', text: 'none named' }
const joined = (list: readonly string[]) => (list.length > 0 ? textCell(list.join(', ')) : none)

/** What somebody asks who chooses a panel, each with the columns that answer it. */
export const questions: readonly { readonly question: string; readonly columns: readonly C[] }[] = [
  {
    question: 'Efficiency',
    columns: [
      {
        key: 'efficiency',
        label: 'from its size',
        better: 'more',
        cell: ({ answers }) => numberCell(answers.efficiency, 1, '%', 100),
      },
      {
        key: 'efficiency_printed',
        label: 'as printed',
        better: 'more',
        cell: ({ answers }) => numberCell(answers.efficiency_printed, 1, '%', 100),
      },
    ],
  },
  {
    question: 'Power left on a hot day, by mounting',
    columns: [hot('bonded'), hot('canvas'), hot('standoff'), hot('open rack')],
  },
  {
    question: 'Power per weight',
    columns: [
      {
        key: 'w_per_kg',
        label: 'panel alone',
        better: 'more',
        cell: ({ answers }) => numberCell(answers.w_per_kg, 1, 'W/kg'),
      },
      {
        key: 'w_per_kg_framed',
        label: 'with its frame',
        better: 'more',
        cell: ({ answers }) => numberCell(answers.w_per_kg_framed, 1, 'W/kg'),
      },
    ],
  },
  {
    question: 'Price',
    columns: [
      {
        key: 'price_per_watt',
        label: 'per watt',
        better: 'less',
        cell: ({ answers }) => moneyCell(answers.price_per_watt),
      },
      {
        key: 'price_per_kwh_warranted',
        label: 'per warranted kWh',
        better: 'less',
        cell: ({ answers }) => moneyCell(answers.price_per_kwh.warranted, 3),
      },
      {
        key: 'price_per_kwh_expected',
        label: 'per expected kWh',
        better: 'less',
        cell: ({ answers }) => moneyCell(answers.price_per_kwh.expected, 3),
      },
      {
        key: 'expected_life',
        label: 'expected life',
        better: 'more',
        cell: ({ life }) => {
          if (!life) return unknown
          const years = Number(life.years.toFixed(1))
          return {
            value: years,
            text: inYears(years),
          }
        },
      },
      {
        key: 'expected_life_from',
        label: 'taken from',
        cell: ({ life }) => (life ? textCell(life.from) : unknown),
      },
    ],
  },
  {
    question: 'Warranty and durability',
    columns: [
      {
        key: 'output_years',
        label: 'output',
        better: 'more',
        cell: ({ answers, steps }) => ({
          value: answers.warranty.output_years,
          text: steps.map(({ years, share }) => `${inYears(years)} ${percent(share)} %`).join(', ') || 'not known',
        }),
      },
      {
        key: 'workmanship_years',
        label: 'workmanship',
        better: 'more',
        cell: ({ answers }) => yearsCell(answers.warranty.workmanship_years),
      },
      { key: 'surface', label: 'front cover', cell: ({ answers }) => textCell(answers.surface) },
      { key: 'exclusions', label: 'void after', cell: ({ answers }) => joined(answers.warranty.exclusions) },
    ],
  },
]

const inYears = (years: number) => `${years} ${years === 1 ? 'year' : 'years'}`
const yearsCell = (years: number | null): Cell => (years === null ? unknown : { value: years, text: inYears(years) })
const percent = (share: number) => Number((100 * share).toFixed(1))

const notKnown: C = {
  key: 'not_known',
  label: 'not known',
  cell: ({ answers }) => {
    const text = answers.not_known.join(', ') || 'nothing'
    return { value: text, text }
  },
}

export const leading = panel

/** Every column, in the order of the questions. */
export const panelColumns: readonly C[] = [panel, ...questions.flatMap(({ columns }) => columns), notKnown]

export const lastQuestion = { question: 'What the records leave out', columns: [notKnown] }
