import type { Page, Piece, Run } from './page.ts'

// in em: what the gaps between runs of one line mean
const blank = 0.12
const cell = 0.7

/**
 * Joins the runs of a page to the texts of its cells. Glyphs and words that are drawn one by one come together by the
 * gaps between them; subscripts join their line; a raised mark behind a value is a footnote and is left out.
 */
export function piecesOf(page: Page): readonly Piece[] {
  const runs = distinct(page.runs.filter(({ text }) => text.trim() !== ''))
  return linesOf(runs).flatMap((line) => split(line, page.number))
}

interface Line {
  readonly y: number
  readonly size: number
  readonly runs: Run[]
}

/** Runs on one baseline, each small run with the line whose letters it touches. */
function linesOf(runs: readonly Run[]): readonly Line[] {
  const lines: Line[] = []
  for (const run of [...runs].sort((a, b) => b.size - a.size)) {
    const line = lines.find((one) => isOn(one, run))
    if (line) line.runs.push(run)
    else lines.push({ y: run.y, size: run.size, runs: [run] })
  }
  return lines
}

function isOn(line: Line, run: Run): boolean {
  const dy = Math.abs(run.y - line.y)
  if (dy <= 0.1 * line.size) return true
  if (run.size > 0.85 * line.size || dy > 0.5 * line.size) return false
  return line.runs.some((one) => {
    const gap = run.x - (one.x + one.width)
    return -0.1 * line.size < gap && gap < 0.3 * line.size
  })
}

function split({ runs, y, size }: Line, page: number): readonly Piece[] {
  const pieces: Piece[] = []
  let open: { text: string; x: number; right: number; size: number; font: string } | null = null
  const close = () => {
    if (!open) return
    const { x, right, font } = open
    const text = tidy(open.text)
    if (text && text.length <= longest)
      pieces.push({ text, x, y, width: right - x, right, size: open.size, font, page })
    open = null
  }
  for (const run of [...runs].sort((a, b) => a.x - b.x)) {
    const em = Math.max(run.size, open ? Math.min(open.size, size) : 0)
    const gap = open ? run.x - open.right : 0
    const raised = y - run.y > 0.15 * size && run.size < 0.85 * size
    if (open && gap > cell * em) close()
    const text: string = raised ? raisedText(open?.text ?? '', run.text) : run.text
    if (!open) open = { text, x: run.x, right: run.x + run.width, size: run.size, font: run.font }
    else {
      open.text += (gap > blank * em && !raised ? ' ' : '') + text
      open.right = Math.max(open.right, run.x + run.width)
      if (run.size > open.size) open.size = run.size
    }
  }
  close()
  return pieces
}

/** A raised 2 behind a metre is a square, a raised o a degree sign; another mark leads to a footnote. */
function raisedText(before: string, text: string): string {
  const mark = text.trim()
  if (/^[23]$/.test(mark) && /m$/.test(before)) return mark
  if (/^[oO°]$/.test(mark)) return '°'
  if (/^[-−–]1$/.test(mark)) return '^-1'
  return /^[\d*†‡()[\],a-e]+$/.test(mark) ? '' : text
}

/** A longer text is a paragraph and no cell; it also bounds what the expressions of labels and numbers have to scan. */
const longest = 500

const tidy = (text: string): string =>
  text
    .replace(/(?<![mM])[⁰¹²³⁴-⁹⁽⁾]+/g, '')
    .replace(/[\s\u00a0\u2000-\u200b\u202f\u205f]+/g, ' ')
    .trim()

/** Bold print of some programs is the same text drawn twice, a hair apart. */
function distinct(runs: readonly Run[]): readonly Run[] {
  const seen = new Map<string, Run[]>()
  return runs.filter((run) => {
    const same = seen.get(run.text) ?? []
    if (same.some((o) => Math.abs(o.x - run.x) < 0.1 * run.size && Math.abs(o.y - run.y) < 0.1 * run.size)) return false
    seen.set(run.text, [...same, run])
    return true
  })
}
