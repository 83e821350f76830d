import { formatNumber } from '../../quantities/format.ts'
import type { MeasuredRow, Pair } from '../../review/page/measured-rows.ts'
import type { PageData } from '../../review/page/page-data.ts'
import type { PowerHistory } from '../../review/picture/power-history.ts'
import { drawn } from '../drawn.ts'
import { tenths, whole } from '../numbers.ts'
import { powerHistoryPicture } from '../pictures/power-history.ts'
import type { Drawing } from '../svg/link.ts'
import { section, type Leaf, type Table } from './blocks.ts'
import { sayIn } from '../../wording/phrase.ts'

/** A leaf of its own for what was measured; none where nothing was. */
export function measuredLeaf({ picture, measured }: PageData, drawing: Drawing, subtitle: string): readonly Leaf[] {
  if (measured.length === 0) return []
  const say = sayIn(drawing.bundle)
  const histories = picture.powerHistories
  return [
    {
      title: say`Measured on the day: ${picture.name}`,
      subtitle,
      sections: [
        ...section(
          say`What the meter showed, and what the records expect in the same sun and warmth`,
          { type: 'table', table: measuredTable(measured, say) },
          {
            type: 'text',
            text: say`Translated to the conditions of the day by IEC 60891, procedure 2. A difference within ${formatNumber(100 * measured[0]!.limit, 2)} %, or within its uncertainty from meter, irradiance and temperature, is no finding.`,
          },
        ),
        ...section(say`Power left by year`, {
          type: 'pictures',
          pictures: drawn(...histories.map((one) => [one.id, powerHistoryPicture(drawing, one)] as const)),
          instead: historyTable(histories, say),
        }),
        ...section(say`At this pace`, { type: 'list', items: histories.flatMap((one) => pace(one, say)) }),
      ],
    },
  ]
}

type Say = ReturnType<typeof sayIn>

function measuredTable(rows: readonly MeasuredRow[], say: Say): Table {
  const pairs = (unit: string, { expected, measured }: Pair) => [
    expected === null ? say`not known` : `${formatNumber(expected, 3)} ${unit}`,
    measured === null ? '' : `${formatNumber(measured, 3)} ${unit}`,
  ]
  return {
    form: 'expected',
    name: say`Measured values`,
    head: [
      say`date`,
      say`array`,
      say`string`,
      'Voc',
      say`measured`,
      'Isc',
      say`measured`,
      say`power`,
      say`measured`,
      say`within`,
      say`verdict`,
    ],
    figures: [2, 3, 4, 5, 6, 7, 8, 9],
    rows: rows.map(({ date, array, string, voc, isc, power, verdict, uncertainty }) => [
      date,
      array,
      String(string),
      ...pairs('V', voc),
      ...pairs('A', isc),
      ...pairs('W', power),
      uncertainty === null ? '' : `${tenths(100 * uncertainty)} %`,
      verdict,
    ]),
  }
}

function historyTable(histories: readonly PowerHistory[], say: Say): Table {
  return {
    name: say`Power left by year`,
    head: [say`array`, say`date`, say`after`, say`power left`],
    figures: [2, 3],
    rows: histories.flatMap(({ id, points }) =>
      points.map(({ date, years, left, uncertainty }) => [
        id,
        date,
        say`${tenths(years)} years`,
        `${whole(100 * left)} % ± ${tenths(100 * uncertainty)} %`,
      ]),
    ),
  }
}

function pace({ id, trend, ending }: PowerHistory, say: Say): string[] {
  if (!trend) return []
  const change = `${trend.slope < 0 ? '' : '+'}${formatNumber(100 * trend.slope, 2)} %`
  return [say`${id}: ${change} a year; ${ending}.`]
}
