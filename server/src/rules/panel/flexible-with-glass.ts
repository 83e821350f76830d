import { panelRule } from '../about.ts'

export const flexibleWithGlass = panelRule({
  id: 'flexible-with-glass',
  severity: 'warning',
  reason: 'A panel behind glass does not bend; the construction or the surface was picked wrongly.',
  source: 'common practice, no source',
  messages: {
    found: 'A {construction} panel with a front of {surface} contradicts itself',
  },

  check({ construction, surface }) {
    if (construction?.value !== 'flexible' || surface?.value !== 'glass') return null
    return {
      say: 'found',
      with: { construction, surface },
      suspects: [surface, construction],
    }
  },
})
