import { coldVoltageFactor } from '../../server/src/physics/cold-voltage.ts'
import { fuseSizes, nextFuse, stringFuseWindow } from '../../server/src/physics/fuses.ts'
import { mainCurrent, mainDesignCurrent } from '../../server/src/review/bank-current.ts'
import { densityOf } from '../../server/src/rules/panel/current-density-unusual.ts'
import { resolved } from '../review/resolved.ts'
import { about, printed, type Check } from './check.ts'

const energy = 'energy balance (own arithmetic)'
const practices =
  'IEC 62548 practice (as quoted by a worked example) and US National Electrical Code 690.9 (as quoted by trade articles)'
const battery = '{ battery: { chemistry: lifepo4, nominal_voltage: 12.8 V, capacity: { amount: 100 Ah } } }'

const kettle = resolved(`
battery: ${battery}
inverter: { efficiency: 90 %, standby: 15 W }
loads: [{ name: kettle, power: 1200 W, hours: 0.1, supply: ac }]`)
const winch = resolved(`
battery: ${battery}
loads: [{ name: winch, power: 1250 W, hours: 0.1 }]`)
const fridge = resolved(`
battery: ${battery}
loads: [{ name: fridge, current: 4 A, charge: 40 Ah }]`)

/** Currents of the bank, string fuses of both practices, and what goes on beyond tables. */
export const bankChecks: readonly Check[] = [
  printed('1200 W / 0.90 + 15 W at 12.0 V, A', energy, mainCurrent(kettle)!.amps, '112.4'),
  printed('1.25 times that, A', energy, mainDesignCurrent(kettle)!, '140.5'),
  printed('1.25 x 1250 W at 12.0 V, A', energy, mainDesignCurrent(winch)!, '130.2'),
  printed('4 A at 12.8 V, W', energy, fridge.system.loads[0]!.power!.value, '51.2'),
  printed('40 Ah at 4 A, s', energy, fridge.system.loads[0]!.hours!.value, '36000'),
  about('string fuse for Isc 6.6 A, A', practices, nextFuse(fuseSizes.string, stringFuseWindow(6.6, 15).low)!, 12, 0),
  about(
    'the same by IEC practice alone, A',
    practices,
    nextFuse(fuseSizes.string, stringFuseWindow(6.6, 15, 'IEC').low)!,
    10,
    0,
  ),
  printed(
    'factor on Voc at -50 °C',
    'US National Electrical Code, table 690.7(A), extended by its own slope',
    coldVoltageFactor(-50),
    '1.288',
  ),
  printed(
    '54 cells of 108 pieces, 13.99 A on 1762 x 1134 mm, mA/cm2',
    'two strings share area and current (own arithmetic)',
    densityOf(13.99, 54, 1.762 * 1.134),
    '37.8',
  ),
]
