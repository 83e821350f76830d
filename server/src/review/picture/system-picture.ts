import type { Figures } from '../figures.ts'
import type { ResolvedSystem } from '../resolved.ts'
import { chargeOf, type Charge } from './charge.ts'
import { plansOf, type SurfacePlan } from './plan.ts'
import { powerHistories, type PowerHistory } from './power-history.ts'
import { windowsOf, type VoltageWindow } from './windows.ts'
import { wiringOf, type Wiring } from './wiring.ts'
import type { Bundle } from '../../wording/bundle.ts'

/** Everything that the pictures of a system show, in SI units. `figures` are those of the review, as they are. */
export interface SystemPicture {
  readonly kind: 'system'
  readonly name: string
  readonly figures: Figures
  readonly plans: readonly SurfacePlan[]
  readonly charge: Charge | null
  readonly windows: readonly VoltageWindow[]
  readonly wiring: Wiring
  readonly powerHistories: readonly PowerHistory[]
}

export function systemPicture(system: ResolvedSystem, figures: Figures, bundle?: Bundle): SystemPicture {
  return {
    kind: 'system',
    name: system.system.name?.text ?? system.id,
    figures,
    plans: plansOf(system, bundle),
    charge: chargeOf(system),
    windows: windowsOf(system, figures),
    wiring: wiringOf(system, figures, bundle),
    powerHistories: powerHistories(system, bundle),
  }
}
