/** The stem of a file name for a model: `Tern 110 W` is `tern-110-w`. */
export const stemOf = (name: string): string =>
  name
    .toLowerCase()
    .normalize('NFD')
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/g, '-')
    .replace(/^-|-$/g, '') || 'panel'
