import type { RuleFacts } from '../findings/finding.ts'
import { reading } from '../records/facts.ts'
import { batteryRules } from '../rules/battery/index.generated.ts'
import { climateRules } from '../rules/climate/index.generated.ts'
import { controllerRules } from '../rules/controller/index.generated.ts'
import { panelRules } from '../rules/panel/index.generated.ts'
import { reviewRules } from '../review/rules/index.generated.ts'
import { hazards } from '../text/hazards/index.ts'
import { acceptanceFacts } from './acceptances.ts'
import { referenceFacts } from './system.ts'
import { weatherFacts } from './weather.ts'
import { slipFacts } from './one-mistake.ts'
import { sheetFacts } from './sheet-facts.ts'

/** Every rule there is, by chapter of the reference. */
export const allFacts: readonly { readonly title: string; readonly rules: readonly RuleFacts[] }[] = [
  { title: 'Numbers that YAML damages', rules: hazards },
  { title: 'Reading a record', rules: Object.values(reading) },
  { title: 'Panel records', rules: [...panelRules, ...Object.values(slipFacts)] },
  { title: 'Beside the datasheet', rules: Object.values(sheetFacts) },
  { title: 'Controller records', rules: controllerRules },
  { title: 'Battery records', rules: batteryRules },
  { title: 'Climate records', rules: climateRules },
  { title: 'References between records', rules: [...Object.values(referenceFacts), ...Object.values(weatherFacts)] },
  { title: 'Systems', rules: reviewRules },
  { title: 'Acceptances and settings', rules: Object.values(acceptanceFacts) },
]
