// How well sheets are read whose words and layouts nobody listed: invented products in words that were written before the reader saw
// them, printed by a browser, by WeasyPrint, LibreOffice, groff, TeX and reportlab, some rewritten by Ghostscript and qpdf.
//   npm run unlisted -- make FOLDER [--n 60] [--seed 1] [--kept] [--layouts a,b]     writes PDFs and answers.json; --kept takes words and layouts kept apart
//   npm run unlisted -- score FOLDER [--each] [--naive]              reads them; --each prints what is wrong or missed
import { existsSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { parseArgs } from 'node:util'
import { readRatings } from './calibrate/ratings.mjs'
import { load } from './load.mjs'
import { usable } from './unlisted/facts.mjs'
import { kept, open } from './unlisted/layouts.mjs'
import { naiveSheet } from './unlisted/naive.mjs'
import { office, producers, rewritten, styleOf } from './unlisted/producers.mjs'
import { count, report } from './unlisted/score.mjs'
import { sheetOf as invent } from './unlisted/sheet.mjs'

const { values: o, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    n: { type: 'string', default: '60' },
    seed: { type: 'string', default: '1' },
    kept: { type: 'boolean' },
    layouts: { type: 'string' },
    each: { type: 'boolean' },
    naive: { type: 'boolean' },
  },
})
const [what, folder] = positionals
if (what === 'make') await make()
else await score()

async function make() {
  const random = generator(Number(o.seed))
  const words = JSON.parse(
    readFileSync(join(import.meta.dirname, `unlisted/words-${o.kept ? 'kept' : 'open'}.json`), 'utf8'),
  )
  const rows = usable(readRatings('test/published/data/modules-open.csv'))
  const wanted = o.layouts?.split(',')
  const layouts = Object.entries(o.kept || wanted ? { ...open, ...kept } : open).filter(
    ([name]) => wanted?.includes(name) ?? true,
  )
  const languages = ['en', 'en', ...Object.keys(words)]
  const names = Object.keys(producers)
  mkdirSync(folder, { recursive: true })
  const answers = []
  const pages = []
  for (let i = 0; i < Number(o.n); i++) {
    const [layout, { draw, most }] = layouts[i % layouts.length]
    const language = languages[Math.floor(random() * languages.length)]
    const name = `${layout}-${i}`
    const sheet = invent({ name, layout, draw, most, words, language, rows, random })
    const producer = names[Math.floor(random() * names.length)]
    const style = styleOf(random)
    const at = join(folder, name)
    producers[producer](sheet, style, at, folder)
    if (producer === 'office') pages.push(name)
    answers.push({ name, layout, language, producer, models: sheet.models })
  }
  office(folder, pages)
  for (const { name } of answers) if (existsSync(join(folder, `${name}.pdf`))) rewritten(join(folder, name), random)
  writeFileSync(
    join(folder, 'answers.json'),
    JSON.stringify(answers.filter(({ name }) => existsSync(join(folder, `${name}.pdf`)))),
  )
}

async function score() {
  const { pagesOf, readSheet } = await load(
    "export { pagesOf } from './server/src/reader/pdf.ts'; export { readSheet } from './server/src/sheets/read-sheet.ts'",
  )
  const counts = []
  for (const answer of JSON.parse(readFileSync(join(folder, 'answers.json'), 'utf8'))) {
    const pages = await pagesOf(new Uint8Array(readFileSync(join(folder, `${answer.name}.pdf`))))
    counts.push(count(answer, o.naive ? naiveSheet(pages) : readSheet(pages)))
  }
  report(counts, { each: o.each })
}

/** Numbers from 0 to 1, the same for a seed (mulberry32). */
function generator(seed) {
  let state = seed >>> 0
  return () => {
    state = (state + 0x6d2b79f5) >>> 0
    let t = Math.imul(state ^ (state >>> 15), state | 1)
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61)
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296
  }
}
