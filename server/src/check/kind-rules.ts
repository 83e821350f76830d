import type { Found } from '../findings/found.ts'
import type { Library } from '../library/library.ts'
import type { ReadFile } from '../records/read-file.ts'
import { reviewRules } from '../review/rules/index.generated.ts'
import { batteryRules } from '../rules/battery/index.generated.ts'
import { climateRules } from '../rules/climate/index.generated.ts'
import { controllerRules } from '../rules/controller/index.generated.ts'
import { applyRules } from './apply-rules.ts'
import { systemReferences, unresolved, unused } from './references.ts'
import type { Review } from './review.ts'
import { weatherFound } from './weather.ts'
import { settingsFound } from './rule-names.ts'

/** What the rules over records other than panels find, and over a system with its figures. */
export function rulesFound(library: Library, file: ReadFile, review: Review | null): readonly Found[] {
  const stock = () => unused(library, file, file.fields.get('/name'))
  switch (file.kind) {
    case 'panel':
      return stock()
    case 'controller':
      return [...applyRules(controllerRules, file as ReadFile<'controller'>, undefined), ...stock()]
    case 'battery':
      return [...applyRules(batteryRules, file as ReadFile<'battery'>, undefined), ...stock()]
    case 'climate':
      return [
        ...applyRules(climateRules, file as ReadFile<'climate'>, undefined),
        ...weatherFound(library, file as ReadFile<'climate'>),
        ...stock(),
      ]
    case 'system': {
      const { system, figures } = review!
      const { kind, tree } = file
      return [
        ...systemReferences(library, file as ReadFile<'system'>),
        ...applyRules(reviewRules, { kind, record: system, tree }, figures),
      ]
    }
    case 'library':
      return [...settingsFound(file as ReadFile<'library'>), ...unresolved(library, file)]
  }
}
