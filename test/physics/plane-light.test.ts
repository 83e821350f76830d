// What a year is worked out by, hour by hour, is what the published checks of the tilted sky are about.
import { expect, test } from 'vitest'
import { radians } from '../../server/src/physics/angles.ts'
import { planeLight } from '../../server/src/physics/energy.ts'
import { skyBrightness } from '../../server/src/physics/perez.ts'
import { incidenceCosine } from '../../server/src/physics/transposition.ts'
import { perez } from './models/perez.ts'

const hours = [
  { zenith: 30, azimuth: 180, normal: 850, diffuse: 110 },
  { zenith: 62, azimuth: 120, normal: 500, diffuse: 90 },
  { zenith: 75, azimuth: 250, normal: 0, diffuse: 60 },
  { zenith: 87, azimuth: 300, normal: 120, diffuse: 30 },
]
const beyond = 1361

const row = (of: (hour: (typeof hours)[number]) => number) => Float64Array.from(hours, of)
const up = row(({ zenith }) => Math.cos(radians(zenith)))
const brightness = hours.map(({ normal, diffuse }, i) => skyBrightness(normal, diffuse, up[i]!, beyond))
const sun = {
  days: [],
  normal: row(({ normal }) => normal),
  diffuse: row(({ diffuse }) => diffuse),
  global: row(({ normal, diffuse, zenith }) => normal * Math.cos(radians(zenith)) + diffuse),
  extraterrestrial: row(() => beyond),
  aroundSun: Float64Array.from(brightness, ({ aroundSun }) => aroundSun),
  horizon: Float64Array.from(brightness, ({ horizon }) => horizon),
  up,
  east: row(({ zenith, azimuth }) => Math.sin(radians(zenith)) * Math.sin(radians(azimuth))),
  north: row(({ zenith, azimuth }) => Math.sin(radians(zenith)) * Math.cos(radians(azimuth))),
  air: row(() => 20),
}

test.each([
  [0, 180, 0.2],
  [35, 180, 0.2],
  [60, 90, 0],
  [90, 300, 0.6],
])('a plane of %s° that faces %s° above ground of %s', (tilt, azimuth, albedo) => {
  const { arriving } = planeLight(sun, { plane: { tilt, azimuth }, shading: 0, albedo, ar: 0.16 })
  hours.forEach(({ zenith, azimuth: sunAt, normal, diffuse }, i) => {
    const cosine = incidenceCosine({ tilt, azimuth }, zenith, sunAt)
    const { beam, sky, ground } = perez(normal, diffuse, sun.global[i]!, cosine, up[i]!, brightness[i]!, tilt, albedo)
    // the light around the sun is added to the beam there, so that a sky below 0 elsewhere is cut off apart from it
    expect(arriving[i]).toBeCloseTo(beam + sky + ground, 9)
  })
})

// Martin and Ruiz (2001): (1 - exp(-cos/ar)) / (1 - exp(-1/ar)) of the beam gets through; level, with the beam alone.
test('of a beam from straight above all that arrives enters, of one at 60° the published share', () => {
  const beam = (zenith: number) => {
    const cosine = Math.cos(radians(zenith))
    const one = (value: number) => Float64Array.of(value)
    const { arriving, entering } = planeLight(
      {
        ...sun,
        normal: one(800),
        diffuse: one(0),
        global: one(800 * cosine),
        aroundSun: one(0),
        horizon: one(0),
        up: one(cosine),
        east: one(Math.sin(radians(zenith))),
        north: one(0),
      },
      { plane: { tilt: 0, azimuth: 180 }, shading: 0.1, albedo: 0.2, ar: 0.16 },
    )
    return entering[0]! / arriving[0]! / 0.9
  }
  expect(beam(0)).toBeCloseTo(1, 9)
  expect(beam(60)).toBeCloseTo((1 - Math.exp(-0.5 / 0.16)) / (1 - Math.exp(-1 / 0.16)), 9)
})
