import { Body, Equator, Horizon, Observer, SearchRiseSet, type AstroTime } from 'astronomy-engine'
import { expect, test } from 'vitest'
import { declination, equationOfTime, hourAngle, sunPosition, sunsetHourAngle } from '../../server/src/physics/sun.ts'

/** Days through the year; 2025 is in the middle of the four-year cycle. */
const days = Array.from({ length: 25 }, (_, k) => 1 + 15 * k).filter((day) => day <= 365)
const noonOf = (day: number) => new Date(Date.UTC(2025, 0, day, 12))

// Our sun is that of a mean year; the calendar shifts by up to 0.6 days within a leap cycle, 0.23° near the equinoxes.
test.each(days)('day %i: declination within 0.25°, position within 0.3° while the sun is up', (day) => {
  for (const [latitude, longitude] of [
    [43.5, -1.5],
    [-33.9, 18.4],
    [0.5, 30],
    [60, 10.7],
  ] as const) {
    for (const hour of [7, 10, 12, 15, 18]) {
      const when = new Date(Date.UTC(2025, 0, day, hour))
      const observer = new Observer(latitude, longitude, 0)
      const theirs = Equator(Body.Sun, when, observer, true, true)
      expect(Math.abs(declination(day) - theirs.dec)).toBeLessThan(0.25)
      const { altitude, azimuth } = Horizon(when, observer, theirs.ra, theirs.dec)
      const ours = sunPosition(latitude, declination(day), hourAngle(hour, day, longitude, 0))
      if (altitude < 5) continue
      expect(Math.abs(angleBetween(90 - ours.zenith, ours.azimuth, altitude, azimuth))).toBeLessThan(0.3)
    }
  }
})

test.each(days)('day %i: equation of time within 20 s', (day) => {
  const observer = new Observer(0, 0, 0)
  const when = noonOf(day)
  const { ra, dec } = Equator(Body.Sun, when, observer, true, true)
  const { altitude, azimuth } = Horizon(when, observer, ra, dec)
  // West of the meridian the sun is past noon; the angle is read from its place.
  const east = Math.cos(rad(altitude)) * Math.sin(rad(azimuth))
  const theirs = (-Math.asin(east / Math.cos(rad(dec))) / rad(1)) * 4
  expect(Math.abs(equationOfTime(day) - theirs)).toBeLessThan(20 / 60)
})

test.each([
  [43.5, 172],
  [43.5, 355],
  [-33.9, 80],
  [60, 100],
])(
  'latitude %f, day %i: the day lasts as long as the almanac says, less refraction and half the disc',
  (latitude, day) => {
    const observer = new Observer(latitude, 0, 0)
    const midnight = new Date(Date.UTC(2025, 0, day, 0))
    const rise = SearchRiseSet(Body.Sun, observer, +1, midnight, 1) as AstroTime
    const set = SearchRiseSet(Body.Sun, observer, -1, rise.date, 1) as AstroTime
    const theirs = (set.date.getTime() - rise.date.getTime()) / 3.6e6
    const delta = declination(day)
    // The almanac's sun rises 0.833° below the horizon; the hours that takes follow from the slope of its path.
    const cosine =
      (Math.sin(rad(-0.833)) - Math.sin(rad(latitude)) * Math.sin(rad(delta))) /
      (Math.cos(rad(latitude)) * Math.cos(rad(delta)))
    const earlier = Math.acos(cosine) / rad(1) - sunsetHourAngle(latitude, delta)
    const ours = (2 * (sunsetHourAngle(latitude, delta) + earlier)) / 15
    expect(Math.abs(ours - theirs)).toBeLessThan(0.12)
  },
)

const rad = (degrees: number) => (degrees * Math.PI) / 180

function angleBetween(altitude: number, azimuth: number, otherAltitude: number, otherAzimuth: number): number {
  const cosine =
    Math.sin(rad(altitude)) * Math.sin(rad(otherAltitude)) +
    Math.cos(rad(altitude)) * Math.cos(rad(otherAltitude)) * Math.cos(rad(azimuth - otherAzimuth))
  return Math.acos(Math.min(1, cosine)) / rad(1)
}
