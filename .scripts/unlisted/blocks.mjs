// What layouts of invented sheets are made of. `s` picks words and notes what it prints.

export const ratings = ['pmax', 'vmp', 'imp', 'voc', 'isc']
export const thermal = ['noct', 'gamma', 'beta', 'alpha']
export const build = ['cells', 'size', 'weight']
export const limits = ['system', 'fuse', 'operating', 'bend']
export const electric = ['pmax', 'tolerance', 'vmp', 'imp', 'voc', 'isc', 'efficiency']
export const at = (condition, keys = ratings) => keys.map((key) => `${condition} ${key}`)
export const inStc = (keys) => keys.map((key) => (ratings.includes(key) ? `stc ${key}` : key))

export const head = (...cells) => ({ head: true, cells })
export const row = (...cells) => ({ cells })
export const list = (s, keys, i = 0) =>
  keys.filter((key) => s.has(key, i)).map((key) => row(s.label(key), s.text(key, i)))
export const lures = (s) => s.lures().map(([label, text]) => row(label, text))
export const table = (rows, options = {}) => ({ kind: 'table', rows, ...options })
export const title = (s, key) => ({ kind: 'heading', text: s.heading(key) })
export const all = (s) => s.models.map((_, i) => i)
export const names = (s) => s.models.map(({ name }) => name)
export const shared = (s, keys) =>
  table([
    ...keys
      .filter((k) => s.has(k, 0))
      .map((k) =>
        s.same(k)
          ? row(s.label(k), { text: s.text(k, all(s)), span: s.models.length })
          : row(s.label(k), ...all(s).map((i) => s.text(k, i))),
      ),
  ])

export const rest = (s) => [
  title(s, 'thermal'),
  shared(s, thermal),
  title(s, 'mechanical'),
  shared(s, build),
  title(s, 'limits'),
  shared(s, limits),
  title(s, 'packing'),
  table(lures(s)),
]

export const ending = (s) => [title(s, 'limits'), shared(s, limits), table(lures(s))]
