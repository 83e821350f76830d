// What is built, and how.
import { readFileSync } from 'node:fs'

const common = {
  bundle: true,
  minify: true,
  keepNames: false,
  legalComments: 'none',
  metafile: true,
  logLevel: 'warning',
}
const node = {
  ...common,
  platform: 'node',
  format: 'cjs',
  target: 'node20',
  mainFields: ['module', 'main'],
  // as ES modules yaml is read once, not wrapped in functions that are read twice: 4 ms of a start
  alias: { yaml: './node_modules/yaml/browser/dist/index.js' },
}
const web = {
  ...common,
  platform: 'browser',
  target: 'es2022',
  mainFields: ['browser', 'module', 'main'],
  // the others need the buffers of Node
  alias: {
    'csv-parse/sync': './node_modules/csv-parse/dist/esm/sync.js',
    'csv-stringify/sync': './node_modules/csv-stringify/dist/esm/sync.js',
  },
}

/** The PDF library asks whether it may make code at run time; it may not, and then goes another way. */
const withoutCode = {
  name: 'without-code',
  setup({ onLoad }) {
    onLoad({ filter: /pdfjs-dist[\\/].*[.]mjs$/ }, ({ path }) => ({
      contents: readFileSync(path, 'utf8').replaceAll('new Function(', 'null.code('),
    }))
  },
}

/** It could fetch a file by its address, too; a reader of bytes has nothing to fetch with. */
const sealed = {
  define: { fetch: 'undefined', XMLHttpRequest: 'undefined', 'import.meta.url': '""' },
  plugins: [withoutCode],
}

const words = (path) => JSON.parse(readFileSync(path, 'utf8'))

/** A file of words that nothing imports would have nothing to export. Those of the examples in the pages of rules come with it. */
const whole = {
  name: 'whole',
  setup({ onLoad }) {
    onLoad({ filter: /l10n[.]\w+[.]json$/ }, ({ path }) => ({
      contents: `module.exports = ${JSON.stringify({ ...words(path), ...words(path.replace('bundle.', 'examples.')) })}`,
      loader: 'js',
    }))
  },
}

/** Every program of the package, as esbuild is to make it of its `entry`. */
export const programs = [
  {
    ...node,
    entry: 'server/src/terminal/start.ts',
    outfile: 'dist/wattproof.js',
    banner: { js: '#!/usr/bin/env node' },
    external: ['./terminal.js'],
  },
  { ...node, entry: 'server/src/terminal/node.ts', outfile: 'dist/terminal.js' },
  { ...node, entry: 'server/src/editor/node.ts', outfile: 'dist/server.js' },
  { ...node, entry: 'server/src/reader/node.ts', outfile: 'dist/sheet-reader.js', ...sealed },
  {
    ...web,
    entry: 'server/src/report/index.ts',
    outfile: 'dist/pictures.js',
    format: 'iife',
    globalName: 'wattproofPictures', // for a worker of a browser, which has no modules to require
    footer: { js: 'if (typeof module === "object") module.exports = wattproofPictures' },
  },
  ...['de', 'es'].map((language) => ({
    ...web,
    entry: `server/l10n/bundle.l10n.${language}.json`,
    outfile: `dist/languages/${language}.js`,
    format: 'iife',
    globalName: 'wattproofLanguage', // as the pictures, for a worker
    footer: { js: 'if (typeof module === "object") module.exports = wattproofLanguage' },
    plugins: [whole],
  })),
  { ...node, entry: 'client/src/desktop.ts', outfile: 'dist/client.js', external: ['vscode', './session.js'] },
  { ...node, entry: 'client/src/session-desktop.ts', outfile: 'dist/session.js', external: ['vscode'] },
  { ...web, entry: 'server/src/editor/web.ts', outfile: 'dist/web/server.js', format: 'iife' },
  { ...web, entry: 'client/src/view.ts', outfile: 'dist/view/view.js', format: 'iife' },
  { ...web, entry: 'server/src/reader/web.ts', outfile: 'dist/web/sheet-reader.js', format: 'iife', ...sealed },
  {
    ...web,
    entry: 'server/src/reader/page-view.ts',
    outfile: 'dist/view/sheet.js',
    format: 'iife',
    globalName: 'wattproofSheet',
    ...sealed,
  },
  { ...common, entry: 'client/src/view.css', outfile: 'dist/view/view.css' },
  { ...web, entry: 'client/src/web.ts', outfile: 'dist/web/client.js', format: 'cjs', external: ['vscode'] },
]
