import { ruleOver } from '../findings/rule.ts'
import type { Battery, Climate, Controller } from '../records/records.generated.ts'

export const batteryRule = ruleOver<Battery>()
export const climateRule = ruleOver<Climate>()
export const controllerRule = ruleOver<Controller>()
