// Layouts of invented sheets as blocks, for the last measurement.
import {
  limits,
  electric,
  head,
  row,
  lures,
  table,
  title,
  all,
  shared,
  names,
  inStc,
  at,
  thermal,
  build,
  ending,
} from './blocks.mjs'

/** Layouts kept apart for the last measurement. */
export const kept = {
  series: {
    most: 3,
    draw: (s) => [
      ...[0, 1].flatMap((k) => {
        const own = all(s).filter((i) => i % 2 === k)
        return own.length === 0
          ? []
          : [
              { kind: 'heading', text: `${s.heading('stc')} ${k + 1}` },
              table([
                head(s.label('model'), ...own.map((i) => s.models[i].name)),
                ...[...inStc(s.order(electric)), 'size', 'weight'].map((key) =>
                  row(s.label(key), ...own.map((i) => s.text(key, i))),
                ),
              ]),
            ]
      }),
      title(s, 'thermal'),
      shared(s, ['gamma', 'beta', 'alpha', 'noct', ...limits]),
      table(lures(s)),
    ],
  },
  conditions: {
    most: 4,
    draw: (s) => [
      table([
        head(s.label('model'), '', ...at('stc').map((k) => `${s.label(k)} [${s.unit(k)}]`)),
        ...all(s).flatMap((i) => [
          row(s.models[i].name, 'STC', ...at('stc').map((k) => s.bare(k, i))),
          row('', 'NOCT', ...at('noct').map((k) => s.bare(k, i))),
        ]),
      ]),
      title(s, 'mechanical'),
      shared(s, ['cells']),
      ...ending(s),
    ],
  },
  narrow: {
    most: 3,
    draw: (s) => [
      title(s, 'general'),
      table(
        [
          head(s.label('model'), ...names(s)),
          ...[...inStc(s.order(electric)), ...thermal, ...build, ...limits]
            .filter((k) => s.has(k, 0))
            .map((k) =>
              s.same(k)
                ? row(s.label(k), { text: s.text(k, all(s)), span: s.models.length })
                : row(s.label(k), ...all(s).map((i) => s.text(k, i))),
            ),
        ],
        { narrow: true, glyphs: s.chance(0.5) },
      ),
      table(lures(s)),
    ],
  },
}
