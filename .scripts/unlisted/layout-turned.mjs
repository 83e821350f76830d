// Values before their labels.
import { electric, row, table, title, inStc, thermal, build, limits } from './blocks.mjs'

export const turned = {
  most: 1,
  draw: (s) => [
    title(s, 'general'),
    table(
      [...inStc(s.order(electric)), ...thermal, ...build, ...limits]
        .filter((k) => s.has(k, 0))
        .map((k) => row(s.text(k, 0), s.label(k))),
    ),
  ],
}
