import type { Finding } from '../findings/finding.ts'
import type { ReadFile } from '../records/read-file.ts'
import { batteryRules } from '../rules/battery/index.generated.ts'
import { climateRules } from '../rules/climate/index.generated.ts'
import { controllerRules } from '../rules/controller/index.generated.ts'
import { judge } from './doubts.ts'

/** What the plausibility rules find in the records that a system uses beside its panels. */
export const controllerFindings = (file: ReadFile<'controller'>): readonly Finding[] =>
  judge(controllerRules, file, undefined)

export const batteryFindings = (file: ReadFile<'battery'>): readonly Finding[] => judge(batteryRules, file, undefined)

export const climateFindings = (file: ReadFile<'climate'>): readonly Finding[] => judge(climateRules, file, undefined)
