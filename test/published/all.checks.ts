import { bankChecks } from './bank.checks.ts'
import { cableChecks } from './cable.checks.ts'
import { caseChecks } from './cases.checks.ts'
import type { Check } from './check.ts'
import { choosingChecks } from './choosing.checks.ts'
import { diodeChecks } from './diode.checks.ts'
import { energyChecks } from './energy.checks.ts'
import { fitChecks } from './fit.checks.ts'
import { irradianceChecks } from './irradiance.checks.ts'
import { measuredSkyChecks } from './measured-sky.checks.ts'
import { reviewChecks } from './review.checks.ts'
import { sunChecks } from './sun.checks.ts'
import { temperatureChecks } from './temperature.checks.ts'
import { translationChecks } from './translation.checks.ts'

/** Every published number that the physics is compared with. */
export const allChecks: readonly Check[] = [
  ...temperatureChecks,
  ...diodeChecks,
  ...fitChecks,
  ...sunChecks,
  ...irradianceChecks,
  ...measuredSkyChecks,
  ...energyChecks,
  ...cableChecks,
  ...reviewChecks,
  ...bankChecks,
  ...caseChecks,
  ...choosingChecks,
  ...translationChecks,
]
