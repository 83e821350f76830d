/**
 * Colours of the pictures. A page may set the variables to those of its theme; what is drawn with them also differs in
 * dashes, shape or a label, so that nobody has to distinguish colours.
 */
export const colours = {
  sun: 'var(--picture-sun, #96650a)',
  hot: 'var(--picture-hot, #b3361f)',
  cool: 'var(--picture-cool, #1f6391)',
  weak: 'var(--picture-weak, #68506f)',
  panel: 'var(--picture-panel, #cfdfea)',
  ground: 'var(--picture-ground, #ffffff)',
  line: 'currentColor',
} as const
