import {
  equationOfTime,
  extraterrestrialNormal,
  horizontalIrradiation,
  hourAngle,
  meanDays,
  sunPosition,
  sunsetHourAngle,
} from '../../server/src/physics/sun.ts'
import { incidenceCosine } from '../../server/src/physics/transposition.ts'
import { about, printed, type Check } from './check.ts'
import { cooperDeclination as declination } from '../physics/models/cooper-declination.ts'

/** Examples of J. A. Duffie, W. A. Beckman, Solar Engineering of Thermal Processes, 4th ed. (2013), as open test suites quote them. */
const book = (example: string) => `Duffie & Beckman, 4th ed. (2013), ${example}`
const megajoule = (wattHours: number) => wattHours * 0.0036

/** As the book has it: solar constant 1367 W/m2, and the declination of Cooper. */
const between = (latitude: number, day: number, from: number, to: number) =>
  megajoule(horizontalIrradiation(latitude, declination(day), extraterrestrialNormal(day, 1367), from, to))
const wholeDay = (latitude: number, day: number) => {
  const sunset = sunsetHourAngle(latitude, declination(day))
  return between(latitude, day, -sunset, sunset)
}

const feb13 = sunPosition(43, declination(44), 15 * (9.5 - 12))
const jul1 = sunPosition(43, declination(182), 15 * (18.5 - 12))
const mar16 = sunPosition(43, declination(75), 15 * 4)
const tilted = sunPosition(43, declination(44), 15 * (10.5 - 12))
const ratio = (tilt: number) => {
  const { zenith, azimuth } = sunPosition(40, declination(47), -37.5)
  return incidenceCosine({ tilt, azimuth: 180 }, zenith, azimuth) / Math.cos((zenith * Math.PI) / 180)
}
const table = (latitude: number, values: readonly number[], within: number) =>
  meanDays.map((day, m) =>
    about(
      `extraterrestrial day, ${latitude}° north, month ${m + 1}, MJ/m2`,
      book('table 1.10.1, made with another series for the declination'),
      wholeDay(latitude, day),
      values[m]!,
      within,
    ),
  )

export const sunChecks: readonly Check[] = [
  about(
    'equation of time, 3 February, min',
    book('example 1.5.1, by a series of 1971'),
    equationOfTime(34),
    -13.5,
    0.3,
  ),
  about(
    'solar time at 10:30, 89.4° west, in minutes past 10',
    book('example 1.5.1'),
    4 * (hourAngle(10.5, 34, -89.4, -90) + 30),
    19,
    0.5,
  ),
  printed('declination, 13 February', book('example 1.6.1'), declination(44), '-14'),
  about(
    'cosine of incidence, from rounded steps',
    book('example 1.6.1'),
    incidenceCosine({ tilt: 45, azimuth: 195 }, tilted.zenith, tilted.azimuth),
    0.817,
    0.001,
  ),
  printed('zenith, 13 February 9:30', book('example 1.6.2'), feb13.zenith, '66.5'),
  about('azimuth, 13 February 9:30 (book from rounded steps)', book('example 1.6.2'), feb13.azimuth - 180, -40, 0.15),
  printed('zenith, 1 July 18:30', book('example 1.6.2'), jul1.zenith, '79.6'),
  printed('azimuth, 1 July 18:30', book('example 1.6.2'), jul1.azimuth - 180, '112.0'),
  printed('declination, 16 March', book('example 1.6.3'), declination(75), '-2.4'),
  printed('zenith, 16 March 16:00', book('example 1.6.3'), mar16.zenith, '70.3'),
  printed('azimuth, 16 March 16:00', book('example 1.6.3'), mar16.azimuth - 180, '66.8'),
  about(
    'sunset, 16 March (book from declination -2.4)',
    book('example 1.6.3'),
    sunsetHourAngle(43, declination(75)),
    87.8,
    0.07,
  ),
  printed('beam on 30° over horizontal', book('example 1.8.2'), ratio(30), '1.61'),
  printed('beam on 50° over horizontal', book('example 1.8.3'), ratio(50), '1.79'),
  printed('extraterrestrial day, 43° north, 15 April, MJ/m2', book('example 1.10.1'), wholeDay(43, 105), '33.8'),
  printed('the hour 10 to 11 of it, MJ/m2', book('example 1.10.2 (from memory)'), between(43, 105, -30, -15), '3.79'),
  printed('extraterrestrial day, 43° north, June, MJ/m2', book('example 2.12.1'), wholeDay(43, 162), '41.8'),
  ...table(45, [12.2, 17.4, 25.1, 33.2, 39.2, 41.7, 40.4, 35.3, 27.8, 19.6, 13.3, 10.7], 0.25),
  ...table(0, [36.2, 37.4, 37.8, 36.7, 34.8, 33.5, 34.0, 35.7, 37.2, 37.3, 36.3, 35.7], 0.15),
]
