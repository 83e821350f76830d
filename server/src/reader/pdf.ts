import { openPdf } from './pdf-file.ts'
import type { Page, Run, Turn } from '../sheets/page.ts'

/** More pages than any datasheet has. */
export const mostPages = 50

/**
 * The texts of a PDF with their places. Scripts, network, fonts of the system and pictures stay off.
 *
 * @throws  where the library cannot read the file: encrypted, damaged, none
 */
export async function pagesOf(bytes: Uint8Array): Promise<readonly Page[]> {
  const task = openPdf(bytes, 1)
  try {
    const document = await task.promise
    const pages: Page[] = []
    for (let number = 1; number <= Math.min(document.numPages, mostPages); number++) {
      const page = await document.getPage(number)
      const { items } = await page.getTextContent()
      const texts = items.flatMap((item) => ('str' in item ? [item] : []))
      const turn = turnOf(texts, page.getViewport({ scale: 1 }).transform)
      const view = page.getViewport({ scale: 1, rotation: (page.rotate + turn) % 360 })
      const runs = texts.flatMap((item) => runOf(item, view.transform))
      pages.push({ number, width: view.width, height: view.height, turn, runs })
      page.cleanup()
    }
    return pages
  } finally {
    await task.destroy()
  }
}

/** By how much a page has to be turned [degrees clockwise] so that most of its text is upright: tables are printed sideways. */
function turnOf(items: readonly Item[], [A = 0, B = 0, C = 0, D = 0]: readonly number[]): Turn {
  const letters = { 0: 0, 90: 0, 180: 0, 270: 0 }
  for (const { str, transform } of items) {
    const [a = 0, b = 0] = transform
    const angle = Math.round((Math.atan2(B * a + D * b, A * a + C * b) * 2) / Math.PI)
    letters[((360 - 90 * angle) % 360) as Turn] += str.length
  }
  const most = ([90, 180, 270] as const).find((turn) => letters[turn] > 3 * (letters[0] + 20))
  return most ?? 0
}

interface Item {
  readonly str: string
  readonly transform: readonly number[]
  readonly width: number
  readonly fontName: string
}

/** In the page as it is shown. Upright text, as in a narrow head of a column, stands where it ends; a slanted watermark is left out. */
function runOf({ str, transform, width: drawn, fontName }: Item, view: readonly number[]): readonly Run[] {
  if (str.trim() === '') return []
  const [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0] = transform
  const [A = 0, B = 0, C = 0, D = 0, E = 0, F = 0] = view
  const across = [A * a + C * b, B * a + D * b] as const
  const size = Math.hypot(A * c + C * d, B * c + D * d)
  if (!(size > 0)) return []
  // a damaged font has letters without a width
  const width = Number.isFinite(drawn) ? drawn : 0.5 * size * str.length
  if (Math.abs(across[0]) < 0.05 * Math.abs(across[1])) {
    const isUp = across[1] < 0
    const x = A * e + C * f + E - (isUp ? 0.8 : 0.2) * size
    const y = B * e + D * f + F + (isUp ? 0 : width)
    return [{ text: str, x, y, width: size, size, font: fontName }]
  }
  if (across[0] <= 0 || Math.abs(across[1]) > 0.05 * across[0]) return []
  return [{ text: str, x: A * e + C * f + E, y: B * e + D * f + F, width, size, font: fontName }]
}
