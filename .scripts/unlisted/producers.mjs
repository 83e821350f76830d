// Programs that make a PDF of a sheet. Each is used where it is installed; `groff` and `tex` and `reportlab` take tables and lines alone.
import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { htmlOf } from './html.mjs'

const quiet = { stdio: ['ignore', 'ignore', 'ignore'] }
const run = (program, args, cwd) => execFileSync(program, args, { ...quiet, cwd, timeout: 120000 })

export const styleOf = (random) => {
  const one = (...list) => list[Math.floor(random() * list.length)]
  return {
    font: one(
      '"Liberation Sans", sans-serif',
      '"DejaVu Sans", sans-serif',
      '"Liberation Serif", serif',
      '"DejaVu Serif", serif',
    ),
    lines: random() < 0.5,
    align: one('left', 'center', 'right'),
    landscape: random() < 0.2,
    pad: one(1, 2, 4),
    flex: true,
  }
}

/** Rows of texts, with spans as empty cells behind; what programs without flowing layout are given. */
function flat(blocks) {
  return blocks.flatMap((b) => {
    if (b.kind === 'columns') return flat(b.parts.flat())
    if (b.kind === 'cards' || b.kind === 'grid')
      return [{ kind: 'table', rows: b.kind === 'grid' ? b.cells : b.cards.map(([v, l]) => [l, v]), heads: 0 }]
    if (b.kind === 'space') return []
    if (b.kind !== 'table') return [b]
    const cells = ({ cells }) => cells.map((c) => (typeof c === 'string' ? { text: c } : c))
    return [
      {
        kind: 'table',
        heads: b.rows.filter((r) => r.head).length,
        rows: b.rows.map((r) => cells(r).flatMap(({ text, span }) => [text, ...Array((span ?? 1) - 1).fill(null)])),
      },
    ]
  })
}
const bare = (text) => String(text).replace(/_\{([^}]*)\}/g, '$1')

export const producers = {
  chromium: (sheet, style, at) => {
    writeFileSync(`${at}.html`, htmlOf(sheet, style))
    run('chromium', [
      '--headless',
      '--no-sandbox',
      '--disable-gpu',
      '--no-pdf-header-footer',
      `--print-to-pdf=${at}.pdf`,
      `${at}.html`,
    ])
  },
  weasyprint: (sheet, style, at) => {
    writeFileSync(`${at}.html`, htmlOf(sheet, style))
    run('weasyprint', [`${at}.html`, `${at}.pdf`])
  },
  // many at once: a start takes seconds
  office: (sheet, style, at) => writeFileSync(`${at}.html`, htmlOf(sheet, { ...style, flex: false })),
  groff: (sheet, style, at) => {
    const t = (text) =>
      bare(text)
        .replace(/\\/g, '\\e')
        .replace(/[\u00a0\u202f]/g, '\\~')
        .replace(/^\./, '\\&.')
    const tables = flat(sheet.blocks).map((b) => {
      if (b.kind === 'heading') return `.SH\n${t(b.text)}\n`
      if (b.kind === 'line') return `.br\n${t(b.text)}\n`
      const columns = Math.max(...b.rows.map((r) => r.length))
      const key = style.align[0]
      const format = b.rows
        .map((r) => ['l', ...Array(columns - 1).fill(key)].map((k, i) => (r[i] === null ? 's' : k)).join(' '))
        .join('\n')
      const body = b.rows
        .map((r) =>
          r
            .filter((c) => c !== null)
            .map((c) => t(c))
            .join('@'),
        )
        .join('\n')
      return `.TS\n${style.lines ? 'allbox' : ''} tab(@);\n${format}.\n${body}\n.TE\n`
    })
    writeFileSync(
      `${at}.ms`,
      `.nr PS 9\n.nr LL 6.8i\n.nr PO 0.8i\n.LP\n.ft B\n${t(sheet.title)}\n.ft R\n${tables.join('')}`,
    )
    const pdf = execFileSync('groff', ['-Kutf8', '-t', '-ms', '-Tpdf', `${at}.ms`], {
      stdio: ['ignore', 'pipe', 'ignore'],
      maxBuffer: 1e8,
    })
    writeFileSync(`${at}.pdf`, pdf)
  },
  tex: (sheet, style, at, folder) => {
    const t = (text) =>
      String(text)
        .replace(/([&%$#_{}])/g, (c, k, i, whole) => (/^_\{/.test(whole.slice(i)) ? c : `\\${c}`))
        .replace(/_\\?\{([^}\\]*)\\?\}/g, '\\textsubscript{$1}')
        .replace(/[\u00a0\u202f]/g, '~')
        .replace(/×|✕/g, '$\\times$')
        .replace(/−/g, '$-$')
        .replace(/–/g, '--')
        .replace(/±/g, '$\\pm$')
        .replace(/℃/g, '°C')
        .replace(/°/g, '\\textdegree{}')
        .replace(/…/g, '\\dots{}')
        .replace(/²/g, '\\textsuperscript{2}')
        .replace(/[₀ₘₚₖ]/g, (c) => `\\textsubscript{${{ '₀': '0', ₘ: 'm', ₚ: 'p', ₖ: 'k' }[c]}}`)
        .replace(/[ηγβα]/g, (c) => `$\\${{ η: 'eta', γ: 'gamma', β: 'beta', α: 'alpha' }[c]}$`)
        .replace(/~(?=\s)/g, '')
        .replace(/ ~ /g, ' \\textasciitilde{} ')
    const parts = flat(sheet.blocks).map((b) => {
      if (b.kind === 'heading') return `\\subsection*{${t(b.text)}}`
      if (b.kind === 'line') return `${t(b.text)}\\par`
      const columns = Math.max(...b.rows.map((r) => r.length))
      const bar = style.lines ? '|' : ''
      const key = style.align[0]
      const rows = b.rows.map((r) => {
        const out = []
        for (let i = 0; i < r.length; i++) {
          let span = 1
          while (r[i + span] === null) span++
          out.push(span > 1 ? `\\multicolumn{${span}}{c${bar}}{${t(r[i])}}` : t(r[i] ?? ''))
          i += span - 1
        }
        return `${out.join(' & ')} \\\\`
      })
      return `\\noindent\\begin{tabular}{${bar}l${bar}${Array(columns - 1)
        .fill(key)
        .join(
          bar,
        )}${bar}}${style.lines ? '\\hline' : ''}\n${rows.join(style.lines ? '\\hline\n' : '\n')}${style.lines ? '\\hline' : ''}\\end{tabular}\\par\\medskip`
    })
    writeFileSync(
      `${at}.tex`,
      `\\documentclass[9pt,a4paper]{article}\\usepackage[utf8]{inputenc}\\usepackage[T1]{fontenc}\\usepackage{textcomp}\\usepackage[margin=12mm]{geometry}\\begin{document}\\small\\section*{${t(sheet.title)}}\n${parts.join('\n\n')}\n\\end{document}`,
    )
    try {
      run('pdflatex', ['-interaction=nonstopmode', '-output-directory', folder, `${at}.tex`])
    } catch {
      // complains and still prints
    }
  },
  reportlab: (sheet, style, at) => {
    writeFileSync(
      `${at}.json`,
      JSON.stringify({
        title: sheet.title,
        blocks: flat(sheet.blocks).map((b) =>
          b.text
            ? { ...b, text: bare(b.text) }
            : { ...b, rows: b.rows.map((r) => r.map((c) => (c === null ? null : bare(c)))) },
        ),
        style,
      }),
    )
    run('/usr/bin/python3', [join(import.meta.dirname, 'reportlab_sheet.py'), `${at}.json`, `${at}.pdf`])
  },
}

/** Prints many pages with LibreOffice at once. */
export function office(folder, names) {
  if (names.length)
    run(
      'soffice',
      [
        '--headless',
        '--convert-to',
        'pdf:writer_web_pdf_Export',
        '--outdir',
        folder,
        ...names.map((n) => join(folder, `${n}.html`)),
      ],
      folder,
    )
}

/** Rewritten by another program, or turned. */
export function rewritten(at, random) {
  const draw = random()
  const from = `${at}.pdf`
  const to = `${at}-2.pdf`
  if (draw < 0.12) run('gs', ['-q', '-sDEVICE=pdfwrite', '-o', to, from])
  else if (draw < 0.2) run('qpdf', ['--object-streams=generate', '--linearize', from, to])
  else if (draw < 0.28) run('qpdf', [from, to, '--rotate=+90'])
  else return
  writeFileSync(from, readFileSync(to))
}
