import type { PanelRule } from '../about.ts'

export const widthAboveLength: PanelRule = {
  id: 'width-above-length',
  severity: 'information',
  reason: 'The longer side is typed as the length, so that layouts of two panels can be compared.',
  source: 'common practice, no source',

  check({ size: { length, width } }) {
    if (!length || !width || width.value <= length.value) return null
    return {
      message: `The width ${width.text} is larger than the length ${length.text}`,
      suspects: [width, length],
      correction: {
        field: length,
        text: width.text,
        why: 'sides exchanged',
        certainty: 'guess',
        also: [{ field: width, text: length.text }],
      },
    }
  },
}
