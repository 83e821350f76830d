import type { PanelRule } from '../about.ts'

export const thicknessAsSide: PanelRule = {
  id: 'thickness-as-side',
  severity: 'warning',
  reason: 'A side of a few centimetres is the thickness typed one line too high.',
  source: 'common practice, no source',

  check({ size: { length, width, thickness } }) {
    const side = [length, width].find((s) => s && s.value > 0 && s.value < 0.06)
    if (!side) return null
    return {
      message: `A side of ${side.text} is as thin as a panel is thick`,
      suspects: thickness ? [side, thickness] : [side],
    }
  },
}
