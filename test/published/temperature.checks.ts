import { cellTemperature, installedNoctRise, rossCoefficient } from '../../server/src/physics/mounting.ts'
import { about, printed, type Check } from './check.ts'
import {
  faimanTemperature,
  noctCellTemperature,
  sandiaCellTemperature,
  sandiaCoefficients,
} from '../physics/models/temperature-models.ts'

const tests = 'pvlib-python 6382338, tests/test_temperature.py'
const openRack = sandiaCoefficients['glass/cell/glass, open rack']
const skoplaki =
  'Skoplaki & Palyvos, Renewable Energy 34 (2009) 23-29, sloped roof not ventilated (by way of pvlib-python)'

export const temperatureChecks: readonly Check[] = [
  printed(
    'NOCT 46 °C at its own conditions',
    'definition of NOCT',
    cellTemperature(20, 800, rossCoefficient(46, 0)),
    '46.0',
  ),
  printed('Ross, NOCT 50 °C', `${tests}, test_ross`, cellTemperature(30, 1000, rossCoefficient(50, 0)), '67.5'),
  printed(
    'Sandia, open rack, 900 W/m2, 5 m/s',
    `${tests}, test_sapm_cell`,
    sandiaCellTemperature(20, 900, 5, openRack),
    '43.509',
  ),
  printed(
    'Sandia, 500 W/m2, 5 m/s',
    `${tests}, test_sapm_ndarray`,
    sandiaCellTemperature(10, 500, 5, openRack),
    '23.06066166',
  ),
  printed(
    'Faiman, 900 W/m2, 5 m/s',
    `${tests}, test_faiman_default`,
    faimanTemperature(20, 900, 5, 25, 6.84),
    '35.203',
  ),
  printed('Faiman, other coefficients', `${tests}, test_faiman_kwargs`, faimanTemperature(20, 900, 5, 22, 6), '37.308'),
  printed(
    'NOCT with efficiency and wind',
    `${tests}, test_noct_sam`,
    noctCellTemperature(25, 1000, 0.51, 45, 0.2),
    '55.230790492',
  ),
  about(
    'Ross coefficient of a bonded panel, NOCT 46 °C, within the spread of published 0.048 to 0.060',
    skoplaki,
    rossCoefficient(46, installedNoctRise.bonded),
    0.0563,
    0.006,
  ),
]
