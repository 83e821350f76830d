import { ampacity, airFactor, bundleFactor } from '../../server/src/physics/ampacity.ts'
import { gaugeArea, resistancePerMetre } from '../../server/src/physics/cable.ts'
import { nextFuse, fuseSizes, stringFuseWindow } from '../../server/src/physics/fuses.ts'
import { about, printed, relative, type Check } from './check.ts'
import { peukertHours } from '../physics/models/peukert.ts'

const necTable =
  'US National Electrical Code, chapter 9, table 8, stranded copper at 75 °C, ohm per kft (as quoted in open codes)'
const perThousandFeet = (gauge: number) => (0.017241 / gaugeArea(gauge)) * ((234.5 + 75) / 254.5) * 304.8
const boat = '33 CFR 183.425, table 5'

export const cableChecks: readonly Check[] = [
  ...(
    [
      [14, 3.14],
      [12, 1.98],
      [10, 1.24],
      [8, 0.778],
      [6, 0.491],
      [4, 0.308],
      [2, 0.194],
      [-1, 0.0967],
      [-3, 0.0608],
    ] as const
  ).map(([gauge, theirs]) =>
    relative(
      `gauge ${gauge}, 2 to 4 % for the lay of the strands`,
      necTable,
      perThousandFeet(gauge) * 1.02,
      theirs,
      0.023,
    ),
  ),
  printed('area of 10 AWG, mm2', 'ASTM B258, table (from memory)', gaugeArea(10), '5.261'),
  printed('area of 4/0 AWG, mm2', 'ASTM B258, table (from memory)', gaugeArea(-3), '107.2'),
  printed(
    '6 mm2 class 5 at 20 °C, ohm/km',
    'IEC 60228, table 3',
    1000 * resistancePerMetre(6, 'class 5 plain', 20),
    '3.30',
  ),
  relative(
    'its change to 70 °C',
    'IEC 60228, temperature factor 0.836 (from memory)',
    resistancePerMetre(6, 'class 5 plain', 70) / resistancePerMetre(6, 'class 5 plain', 20),
    1 / 0.836,
    1e-3,
  ),
  about('10 AWG, 105 °C', boat, ampacity(gaugeArea(10), 105)!, 60, 0),
  about('6 mm2 counts as 10 AWG, 90 °C', boat, ampacity(6, 90)!, 55, 0),
  about('2/0 AWG, 75 °C', boat, ampacity(gaugeArea(-1), 75)!, 265, 0),
  about(
    'engine space, 105 °C insulation',
    'ABYC E-11 (as quoted by marine trade pages)',
    airFactor(105, 50),
    0.85,
    0.007,
  ),
  about('engine space, 60 °C insulation', 'ABYC E-11 (from memory)', airFactor(60, 50), 0.58, 0.005),
  about(
    '60 °C air, 90 °C insulation',
    'US National Electrical Code, ambient factors (as quoted in open codes)',
    airFactor(90, 60),
    0.71,
    0.005,
  ),
  about(
    '70 °C air, 90 °C insulation',
    'US National Electrical Code, ambient factors (as quoted in open codes)',
    airFactor(90, 70),
    0.58,
    0.005,
  ),
  about('5 conductors together', 'ABYC E-11 (as quoted by marine trade pages)', bundleFactor(5), 0.6, 0),
  about(
    'string fuse for Isc 12.28 A, at most 20 A',
    'IEC 62548 practice, a worked example of a trade page',
    nextFuse(fuseSizes.string, stringFuseWindow(12.28, 20).low)!,
    20,
    0,
  ),
  printed(
    '100 Ah (20 h), exponent 1.25, at 20 A, h',
    'Peukert (1897), own arithmetic',
    peukertHours(100, 20, 20, 1.25),
    '3.536',
  ),
  printed(
    '100 Ah (20 h), exponent 1.05, at 50 A, h',
    'Peukert (1897), own arithmetic',
    peukertHours(100, 20, 50, 1.05),
    '1.783',
  ),
]
