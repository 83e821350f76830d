import { panelRule } from '../about.ts'

export const widthAboveLength = panelRule({
  id: 'width-above-length',
  severity: 'hint',
  reason: 'The longer side is typed as the length, so that layouts of two panels can be compared.',
  source: 'common practice, no source',
  messages: {
    found: 'The width {width} is larger than the length {length}',
    sidesExchanged: 'sides exchanged',
  },

  check({ size: { length, width } }) {
    if (!length || !width || width.value <= length.value) return null
    return {
      say: 'found',
      with: { width, length },
      suspects: [width, length],
      correction: {
        field: length,
        text: width.text,
        why: { say: 'sidesExchanged' },
        certainty: 'guess',
        also: [{ field: width, text: length.text }],
      },
    }
  },
})
