import { panelRule } from '../about.ts'

export const thicknessAsSide = panelRule({
  id: 'thickness-as-side',
  severity: 'warning',
  reason: 'A side of a few centimetres is the thickness typed one line too high.',
  source: 'common practice, no source',
  messages: {
    found: 'A side of {side} is as thin as a panel is thick',
  },

  check({ size: { length, width, thickness } }) {
    const side = [length, width].find((s) => s && s.value > 0 && s.value < 0.06)
    if (!side) return null
    return {
      say: 'found',
      with: { side },
      suspects: thickness ? [side, thickness] : [side],
    }
  },
})
