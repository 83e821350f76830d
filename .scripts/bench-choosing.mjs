// How long it takes to pack panels on a surface, and to compare 500 panels on one. Build first.
import { build } from 'esbuild'
import { spawnSync } from 'node:child_process'
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { pathToFileURL } from 'node:url'

const folder = mkdtempSync(join(tmpdir(), 'wattproof-bench-'))
const outfile = join(folder, 'pack.mjs')
await build({ entryPoints: ['server/src/review/packing/pack-panels.ts'], bundle: true, format: 'esm', outfile })
const { packPanels } = await import(pathToFileURL(outfile).href)

const solved = JSON.parse(readFileSync('test/review/packing/solved.json', 'utf8')).surfaces
const large = [0, 1, 4, 12].map((keepOuts) => ({
  surface_cm: [1000, 400],
  panel_cm: [63, 31],
  keep_out_cm: Array.from({ length: keepOuts }, (_, i) => [37 + 83 * i, (131 * i) % 340, 40 + i, 31 + i]),
}))
for (const [what, surfaces] of [
  ['solved surfaces', solved],
  ['200 panels around 0, 1, 4, 12 keep-outs', large],
]) {
  print(`${what}, first time`, surfaces.map(time))
  // a comparison packs hundreds of panels, an editor the same surface again and again
  const again = Array.from({ length: 7 }, () => surfaces.map(time))
  print(
    `${what}, median of seven more`,
    surfaces.map((_, i) => again.map((pass) => pass[i]).sort((a, b) => a - b)[3]),
  )
}

function time({ surface_cm: surface, panel_cm: panel, keep_out_cm: keepOut }) {
  const shape = { length: surface[0] / 100, width: surface[1] / 100, gap: 0 }
  const blocked = keepOut.map(([x, y, l, w]) => ({ x: x / 100, y: y / 100, length: l / 100, width: w / 100 }))
  const start = performance.now()
  packPanels({ ...shape, keepOut: blocked }, { length: panel[0] / 100, width: panel[1] / 100 })
  return performance.now() - start
}

function print(what, times) {
  const most = Math.max(...times)
  console.log(
    `${what.padEnd(54)} longest ${most.toFixed(0).padStart(4)} ms, limit 50 ms: ${most < 50 ? 'kept' : 'MISSED'}`,
  )
}

cpSync('samples/systems', join(folder, 'library'), { recursive: true })
const record = readFileSync('samples/systems/panels/puffin-115.panel.yaml', 'utf8')
for (let i = 0; i < 496; i++) {
  // no two have the same ratings or the same size
  const share = 0.6 + i / 400
  const scaled = (key, digits) => (text) =>
    text.replace(new RegExp(`(?<=stc:[^]*?${key}: )[\\d.]+`), (number) => (number * share).toFixed(digits))
  const text = [scaled('pmax', 1), scaled('imp', 3), scaled('isc', 3)].reduce((t, scale) => scale(t), record)
  const sized = text.replace(/length: \d+ mm/, `length: ${700 + ((i * 37) % 900)} mm`)
  writeFileSync(join(folder, 'library', 'panels', `any-${i}.panel.yaml`), sized)
}
for (const surface of ['bimini', 'coachroof']) {
  const system = join(folder, 'library', 'boat.system.yaml')
  const start = performance.now()
  const { status, stderr } = spawnSync(process.execPath, ['dist/wattproof.js', 'compare', system, '--surface', surface])
  if (status !== 0) throw new Error(String(stderr))
  const seconds = (performance.now() - start) / 1000
  console.log(
    `${`500 panels on the ${surface}, reading included`.padEnd(54)} ${seconds.toFixed(1)} s, limit 2 s: ${seconds < 2 ? 'kept' : 'MISSED'}`,
  )
}
rmSync(folder, { recursive: true })
