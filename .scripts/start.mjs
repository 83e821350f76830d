// What `npm start` shows on a fresh machine, in about a screen: a library in order, what a panel and a system are worth, one
// planted mistake with its fix, and where to go from there.
import { spawnSync } from 'node:child_process'

const width = 100
const env = process.stdout.isTTY ? { FORCE_COLOR: '1', ...process.env } : process.env

show('A library that is in order:', ['check', 'samples/library'])
show('What a panel is worth, from its record:', ['values', 'samples/library/panels/tern-110.panel.yaml'], {
  part: (lines) => {
    const inputs = lines[0].indexOf('from')
    return lines
      .filter((line) => !/^(energy|price_per_kwh|weight_per_area|voc_per_cell)/.test(line))
      .map((line) => line.slice(0, inputs).trimEnd())
  },
})
show('What a system comes to:', ['review', 'samples/systems/boat.system.yaml'], {
  part: (lines) => lines.slice(lines.indexOf('Arrays'), lines.indexOf('Loads and other sources') - 1),
})
show(
  'A record with the decimal point of Voc in the wrong place:',
  ['check', 'samples/mistakes/decimal-point-moved.panel.yaml'],
  { code: 1 },
)
show(
  'What no arithmetic can check is compared with the datasheet beside the record:',
  ['sheet', 'samples/library/panels/tern-110.panel.yaml'],
  {
    part: (lines) => lines.filter((line) => /^\/(weight|limits\/series_fuse)/.test(line)),
  },
)

console.log(`Next:
  node dist/wattproof.js check samples/mistakes   the other planted mistakes, one a record
  node dist/wattproof.js report samples/systems/boat.system.yaml -o boat.html
                                                  the page for a customer, to open in a browser and print
  node dist/wattproof.js new panel                a form for a record of your own
  npm run package                                 wattproof.vsix, for the editor: Extensions, Install from VSIX
  README.md                                       a tour of two minutes, and the cautions: figures are an aid`)

/** Runs the command line as a person would and prints what it says, or a part of that. */
function show(why, args, { part = (lines) => lines, code = 0 } = {}) {
  const run = spawnSync(process.execPath, ['dist/wattproof.js', ...args], { encoding: 'utf8', env })
  if (run.status !== code) throw new Error(`wattproof ${args.join(' ')} ended with ${run.status}: ${run.stderr}`)
  const lines = part(run.stdout.trimEnd().split('\n'))
  console.log(
    `${why}\n\n  $ wattproof ${args.join(' ')}\n${lines.map((line) => `  ${cut(line)}`.trimEnd()).join('\n')}\n`,
  )
}

/** A line of a table that is wider than the window; a finding is printed in full. */
function cut(line) {
  return line.length > width && / {2}/.test(line) ? `${line.slice(0, width - 1).trimEnd()}…` : line
}
