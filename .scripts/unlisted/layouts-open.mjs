// Layouts of invented sheets as blocks: headings, paragraphs, tables with spans, columns, cards.
import {
  ratings,
  thermal,
  build,
  limits,
  electric,
  at,
  inStc,
  head,
  row,
  list,
  lures,
  table,
  title,
  all,
  shared,
  names,
  rest,
  ending,
} from './blocks.mjs'
import { turned } from './layout-turned.mjs'

/** Layouts whose failures may be looked at. */
export const open = {
  list: {
    most: 1,
    draw: (s) => [
      {
        kind: 'columns',
        parts: [
          [
            title(s, 'stc'),
            table(list(s, inStc(s.order(electric)))),
            title(s, 'noct'),
            table(list(s, at('noct'))),
            title(s, 'thermal'),
            table(list(s, thermal)),
          ],
          [title(s, 'mechanical'), table([...list(s, build), ...lures(s)]), title(s, 'limits'), table(list(s, limits))],
        ],
      },
    ],
  },
  units: {
    most: 1,
    draw: (s) => [
      title(s, 'general'),
      table(
        [...inStc(s.order(electric)), ...thermal, 'length', 'width', 'thickness', 'weight', ...limits]
          .filter((k) => s.has(k, 0))
          .map((k) => row(s.label(k), s.unit(k), s.bare(k, 0))),
      ),
    ],
  },
  columns: {
    most: 4,
    draw: (s) => [
      title(s, 'stc'),
      table([
        head(s.label('model'), ...names(s)),
        ...inStc(s.order(electric)).map((k) => row(s.label(k), ...all(s).map((i) => s.text(k, i)))),
      ]),
      title(s, 'noct'),
      table([
        head(s.label('model'), ...names(s)),
        ...at('noct').map((k) => row(s.label(k), ...all(s).map((i) => s.text(k, i)))),
      ]),
      ...rest(s),
    ],
  },
  rows: {
    most: 5,
    draw: (s) => [
      title(s, 'stc'),
      table(
        [
          head(s.label('model'), ...[...inStc(ratings), 'weight'].map((k) => `${s.label(k)} (${s.unit(k)})`)),
          ...all(s).map((i) => row(s.models[i].name, ...[...inStc(ratings), 'weight'].map((k) => s.bare(k, i)))),
        ],
        { upright: s.chance(0.5) },
      ),
      title(s, 'thermal'),
      shared(s, thermal),
      ...ending(s),
    ],
  },
  beside: {
    most: 2,
    draw: (s) => [
      title(s, 'general'),
      table([
        head(s.label('model'), ...names(s).map((text) => ({ text, span: 2 }))),
        head('', ...names(s).flatMap(() => s.conditions())),
        ...ratings.map((k) =>
          row(s.label(`stc ${k}`), ...all(s).flatMap((i) => [s.text(`stc ${k}`, i), s.text(`noct ${k}`, i)])),
        ),
      ]),
      ...rest(s),
    ],
  },
  cards: {
    most: 1,
    draw: (s) => [
      title(s, 'stc'),
      { kind: 'cards', cards: [...inStc(ratings), 'efficiency'].map((k) => [s.text(k, 0), s.label(k)]) },
      title(s, 'mechanical'),
      { kind: 'cards', cards: [...build, 'fuse', 'system'].map((k) => [s.text(k, 0), s.label(k)]) },
      table(lures(s)),
    ],
  },
  leaders: {
    most: 1,
    draw: (s) => [
      title(s, 'general'),
      ...[...inStc(s.order(electric)), ...thermal, ...build, ...limits]
        .filter((k) => s.has(k, 0))
        .map((k) => ({ kind: 'line', text: `${s.label(k)} ${'.'.repeat(20)} ${s.text(k, 0)}` })),
    ],
  },
  pairs: {
    most: 1,
    draw: (s) => [
      title(s, 'general'),
      table([
        row(s.label('stc pmax'), s.text('stc pmax', 0)),
        row(`${s.label('stc vmp')} / ${s.label('stc imp')}`, `${s.text('stc vmp', 0)} / ${s.text('stc imp', 0)}`),
        row(`${s.label('stc voc')} / ${s.label('stc isc')}`, `${s.text('stc voc', 0)} / ${s.text('stc isc', 0)}`),
        ...list(s, [...thermal, ...build, ...limits]),
        ...lures(s),
      ]),
    ],
  },
  overleaf: {
    most: 3,
    draw: (s) => [
      { kind: 'space', lines: 30 },
      table(
        [
          head(s.label('model'), ...names(s)),
          ...[
            ...inStc(s.order(electric)),
            'gamma',
            'beta',
            'alpha',
            'noct',
            'length',
            'width',
            'thickness',
            'weight',
            'cells',
            ...limits,
          ]
            .filter((k) => s.has(k, 0))
            .map((k) => row(s.label(k), ...all(s).map((i) => s.text(k, i)))),
        ],
        { tall: true },
      ),
    ],
  },
  turned,
  sections: {
    most: 4,
    draw: (s) => [
      table([
        head(s.label('model'), ...names(s)),
        { section: true, cells: [{ text: s.heading('stc'), span: s.models.length + 1 }] },
        ...inStc(s.order(electric)).map((k) => row(s.label(k), ...all(s).map((i) => s.text(k, i)))),
        { section: true, cells: [{ text: s.heading('noct'), span: s.models.length + 1 }] },
        ...at('noct').map((k) => row(s.label(k), ...all(s).map((i) => s.text(k, i)))),
        { section: true, cells: [{ text: s.heading('mechanical'), span: s.models.length + 1 }] },
        ...[...build, ...thermal, ...limits]
          .filter((k) => s.has(k, 0))
          .map((k) =>
            s.same(k)
              ? row(s.label(k), { text: s.text(k, all(s)), span: s.models.length })
              : row(s.label(k), ...all(s).map((i) => s.text(k, i))),
          ),
      ]),
      table(lures(s)),
    ],
  },
  symbols: {
    most: 1,
    draw: (s) => [
      title(s, 'general'),
      table([
        ...ratings.map((k) =>
          row(
            { pmax: 'P_{mpp}', vmp: 'U_{mpp}', imp: 'I_{mpp}', voc: 'U_{oc}', isc: 'I_{sc}' }[k],
            s.text(`stc ${k}`, 0),
          ),
        ),
        row('η', s.text('efficiency', 0)),
        row('γ', s.text('gamma', 0)),
        row('β', s.text('beta', 0)),
        row('α', s.text('alpha', 0)),
        row('L × W × H', s.text('size', 0)),
        row('m', s.text('weight', 0)),
      ]),
    ],
  },
  halves: {
    most: 1,
    draw: (s) => [
      {
        kind: 'columns',
        parts: [
          [title(s, 'stc'), table(list(s, at('stc')))],
          [title(s, 'noct'), table(list(s, at('noct')))],
        ],
      },
      {
        kind: 'columns',
        parts: [
          [title(s, 'mechanical'), table(list(s, [...build, 'efficiency']))],
          [title(s, 'limits'), table(list(s, limits)), table(lures(s))],
          [title(s, 'thermal'), table(list(s, thermal))],
        ],
      },
    ],
  },
  prose: {
    most: 1,
    draw: (s) => [
      title(s, 'general'),
      ...[...at('stc'), 'efficiency', 'size', 'weight', 'system', 'fuse'].map((k) => ({
        kind: 'line',
        text: `${s.label(k)}: ${s.text(k, 0)}`,
      })),
      table(lures(s)),
    ],
  },
  stacked: {
    most: 1,
    draw: (s) => [
      title(s, 'general'),
      {
        kind: 'grid',
        cells: [...inStc(s.order(electric)), ...thermal, ...build, ...limits]
          .filter((k) => s.has(k, 0))
          .map((k) => [s.label(k), s.text(k, 0)]),
      },
      table(lures(s)),
    ],
  },
}
