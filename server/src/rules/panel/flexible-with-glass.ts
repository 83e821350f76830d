import type { PanelRule } from '../about.ts'

export const flexibleWithGlass: PanelRule = {
  id: 'flexible-with-glass',
  severity: 'warning',
  reason: 'A panel behind glass does not bend; the construction or the surface was picked wrongly.',
  source: 'common practice, no source',

  check({ construction, surface }) {
    if (construction?.value !== 'flexible' || surface?.value !== 'glass') return null
    return {
      message: `A ${construction.text} panel with a front of ${surface.text} contradicts itself`,
      suspects: [surface, construction],
    }
  },
}
